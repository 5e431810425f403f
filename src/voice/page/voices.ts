/** Finds the browser's voices, which may come late, without an event, or not at all. */
import type { Clock } from '../../bench/ports.ts';
import type { VoiceOffered } from '../shared/voice-choice.ts';
import type { Synthesis } from './speech-synthesis.ts';

const POLL_MS = 250;
const GIVE_UP_MS = 5_000;

/** The voices as soon as there are any; an empty list after five seconds without. */
export function findVoices(synthesis: Synthesis, clock: Clock): Promise<readonly VoiceOffered[]> {
  return new Promise((resolve) => {
    const since = clock.now();
    let cancel = () => {};
    const look = () => {
      cancel();
      const voices = synthesis.getVoices();
      if (voices.length === 0 && clock.now() - since < GIVE_UP_MS) {
        cancel = clock.after(POLL_MS, look);
        return;
      }
      synthesis.removeEventListener?.('voiceschanged', look);
      resolve(voices);
    };
    synthesis.addEventListener?.('voiceschanged', look);
    look();
  });
}
