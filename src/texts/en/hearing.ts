/** Ears and mouths by name, why an ear is deaf, and what to do about the sound that arrives. */

export const hearingTexts = {
  area: 'hearing',
  texts: {
    /** Names, to choose from. */
    earOnDevice: 'browser speech, on this device',
    earService: 'browser speech service',
    earOwn: 'ear of this page, no network',
    earOwnEnglish: 'ear of this page (English only)',
    earKeys: 'keys only',
    earBest: 'The best that keeps sound here',
    earBestNow: 'Now: {name}.',
    earFetches: 'The browser fetches a language pack once.',
    earAgrees: 'Choosing it agrees that the browser may send sound to its maker.',
    mouthBest: 'The best there is',
    mouthBrowser: 'voice of this device',
    mouthWoman: 'voice of this page, woman',
    mouthMan: 'voice of this page, man',
    mouthScottish: 'voice of this page, Scottish man',
    mouthPlain: 'voice of this page, plain',
    mouthSilent: 'screen only, no sound',
    /** Why an ear is deaf, and what helps. */
    insecurePage:
      'This browser gives no microphone to this page. Open it by https or on this machine.',
    otherTab: 'Another tab of this page has the microphone. Close it, then open the ear again.',
    otherProgram: 'Another program holds the microphone. Close it, then open the ear again.',
    taken:
      'Something else keeps taking the microphone: another tab or program. Close it, then try again.',
    refused:
      'The microphone is not allowed for this page. Allow it in the browser beside the address, then open the ear again.',
    noMicrophone: 'No microphone was found. Plug one in, then open the ear again.',
    noUsableMicrophone:
      'No microphone can be used. Plug one in, or close the program that holds it.',
    unplugged: 'The microphone was unplugged. Plug it in, then open the ear again.',
    noService:
      'The browser does not let this page use its speech service. Switch dictation on, or use another ear.',
    noNetwork:
      'The browser cannot reach its speech service. Use the ear of this page, or keys, until the network is back.',
    noSign:
      'The browser says it is listening but gives no sign of hearing. Use the ear of this page, or keys.',
    noPack:
      'The browser has no speech pack for this language on this device. Install it with a tap, or use another ear.',
    notStarted: 'The ear of this page did not start. {why} Try again, or use keys.',
    tooSlow: 'It took longer than thirty seconds.',
    noProgram: 'Its program did not start.',
    noSound:
      'No sound comes from the microphone. Touch the page once; if that does not help, open the ear again.',
    broken: 'The ear of this page has stopped working. Open it again, or use keys.',
    tooNoisy:
      'It is too loud here to hear you safely. Use the keys or the foot switch until it is quieter, or move the microphone closer.',
    /** About the level of the sound. */
    switchedOff: 'No sound arrives at all. Is the microphone switched off?',
    loudRoom: 'The room is loud. Use a headset, close to the mouth.',
    closer: 'Your voice hardly stands out. Move the microphone closer.',
    tooStrong: 'The sound is too strong. Move the microphone away a little.',
  },
} as const;
