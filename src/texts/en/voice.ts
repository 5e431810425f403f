/** The talk about speech itself: how it sounds, when the ear is deaf, and questions to the Slate in a run. */

export const voiceTexts = {
  area: 'voice',
  texts: {
    slower: ['slower'],
    faster: ['faster'],
    louder: ['louder'],
    quieter: ['quieter'],
    slowerTold: 'Slower.',
    fasterTold: 'Faster.',
    louderTold: 'Louder.',
    quieterTold: 'Quieter.',
    slowest: 'No slower.',
    fastest: 'No faster.',
    loudest: 'No louder.',
    quietest: 'No quieter.',
    /** Opens a question to the Slate; also what leaves it again. */
    askSlate: ['slate'],
    leaveSlate: ['never mind'],
    slateAsks: 'Ask.',
    slateMissed: 'Ask again.',
    slateLeft: 'Back to the job.',
    /** Each opens a small list of words that are rarely said; {name} is what may be changed: "other material". */
    leadInput: ['other {name}'],
    leadSpeeds: ['other speed'],
    leadPaces: ['other pace'],
    leadTerms: ['what is'],
    leadParts: ['where is'],
    /** Opens all that is rare at this moment, and the lists above. */
    leadRest: ['other words'],
    leadAsks: 'Which one?',
    /** Shown on the Bench as long as nothing else is wrong. */
    leavesYes: 'Sound leaves this device.',
    leavesMay: 'Sound may leave this device.',
    leavesNo: 'Sound stays on this device.',
    unpronounced: 'The ear of this page cannot hear: {words}. Use the keys for these.',
    /** On the Slate's own screen. */
    sayIt: 'Say it',
    opening: 'One moment',
    sayItNow: 'Listening: say it',
    unheard: 'No question was heard. Tap and ask again, or type it.',
    /** Said once when the ear has gone deaf. */
    deafNoisy: 'Too loud to hear you safely. Use the keys.',
    deafMissing: 'There is no ear. Use the keys.',
    deafRefused: 'The microphone is not allowed. Use the keys.',
    deafTaken: 'The microphone is taken. Use the keys.',
    deafFailing: 'The ear has failed. Use the keys.',
    hearsAgain: 'Listening again.',
  },
} as const;
