/** The ears and mouths this browser has, by the names a person chooses them by. */

import type { Clock, Ear, Mouth } from '../bench/ports.ts';
import type { EarChoice, MouthChoice, Settings } from '../screens/world.ts';
import {
  audioCues,
  browserEar,
  browserMouth,
  findRecognition,
  microphoneLock,
  onDeviceState,
  silentMouth,
} from '../voice/page/index.ts';

export interface Voices {
  ears(): readonly EarChoice[];
  mouths(): readonly MouthChoice[];
  /** Null is keys and buttons only. */
  ear(settings: Settings): Promise<Ear | null>;
  mouth(settings: Settings): Promise<Mouth>;
}

const keysOnly: EarChoice = {
  id: 'keys',
  name: 'Keys and buttons',
  about: 'No microphone is used.',
  soundLeavesDevice: 'no',
};

/** Asks the browser once what it has; nothing is started and no permission is asked. */
export async function findVoices(clock: Clock): Promise<Voices> {
  const Recognition = findRecognition(window as never);
  const onDevice = (await onDeviceState(Recognition, 'en-US', clock)) === 'ready';
  const silent = silentMouth(clock);
  let audio: AudioContext | null = null;
  const cues = audioCues(() => {
    audio ??= new AudioContext();
    return audio;
  }, clock);
  const lock = microphoneLock(navigator.locks);
  const page = {
    visible: () => document.visibilityState === 'visible',
    onChange(call: () => void) {
      document.addEventListener('visibilitychange', call);
      return () => document.removeEventListener('visibilitychange', call);
    },
  };
  const ears: readonly EarChoice[] = [
    keysOnly,
    ...(onDevice ? [browserChoice('on-device')] : []),
    ...(Recognition ? [browserChoice('service')] : []),
  ];
  return {
    ears: () => ears,
    mouths: () => [
      { id: 'auto', name: 'Voice of this device' },
      { id: 'silent', name: 'Screen only' },
    ],
    async ear({ ear }) {
      const wanted = ear === 'auto' && onDevice ? 'on-device' : ear;
      if (!Recognition || (wanted !== 'on-device' && wanted !== 'service')) return null;
      return browserEar({ Recognition, clock, lock, page }, wanted);
    },
    async mouth({ mouth }) {
      if (mouth === 'silent' || !('speechSynthesis' in window)) return silent;
      const world = {
        synthesis: window.speechSynthesis as never,
        Utterance: window.SpeechSynthesisUtterance as never,
        clock,
        cues,
        onLeave: (call: () => void) => window.addEventListener('pagehide', call),
      };
      return (await browserMouth(world)) ?? silent;
    },
  };
}

function browserChoice(mode: 'on-device' | 'service'): EarChoice {
  return mode === 'on-device'
    ? {
        id: mode,
        name: 'Browser speech, on this device',
        about: 'Sound stays on this device.',
        soundLeavesDevice: 'no',
      }
    : {
        id: mode,
        name: 'Browser speech service',
        about: 'The browser may send sound to its maker to be recognised.',
        soundLeavesDevice: 'yes',
      };
}
