/** How long to wait for more after what was said so far. Pure. */
import type { ListenFor } from '../../bench/ports.ts';

/** Frames of ten milliseconds. Telephone practice: half a second after a whole answer, more inside digits. */
export const QUIET_ENOUGH = 26;
/** So soon the words are looked at, so that they are known when the quiet has lasted long enough. */
export const QUIET_TO_LOOK = 14;
/** Nothing that counts yet, or the first half of a phrase: nobody pauses longer inside one. */
export const QUIET_UNSURE = 45;
/** Inside a number people look at the scale. */
export const QUIET_LONG = 75;

/** So many loud frames are worth waiting for; fewer were a knock, and the next word must not join it. */
const WORTH_WAITING = 40;

/** How long a quiet ends an utterance of which this was understood so far, in frames. */
export function quietToEnd(text: string, words: ListenFor, loud: readonly boolean[]): number {
  if (text === '') {
    return loud.filter(Boolean).length < WORTH_WAITING ? QUIET_ENOUGH : QUIET_UNSURE;
  }
  if (!mayGoOn(text, words)) return QUIET_ENOUGH;
  return words.number && NUMBER_WORDS.test(text) ? QUIET_LONG : QUIET_UNSURE;
}

const NUMBER_WORDS =
  /\b(zero|oh|one|two|three|four|five|six|seven|eight|nine|\w+teen|ten|eleven|twelve|\w+ty|hundred|thousand|point|minus|plus)$/;

/** True when the words may be the beginning of something longer that counts now. */
export function mayGoOn(text: string, { phrases, number }: ListenFor): boolean {
  // "stop" need not wait for "stop stop": it means the same, and must act at once.
  const longer = phrases.filter((phrase) => phrase.startsWith(`${text} `));
  if (longer.some((phrase) => phrase !== `${text} ${text}`)) return true;
  if (!number || !NUMBER_WORDS.test(text)) return false;
  const decimals = /\bpoint\b(.*)$/.exec(text)?.[1]?.trim().split(/\s+/).length ?? 0;
  return decimals < number.decimals || decimals === 0;
}
