/**
 * Words turns what people say into numbers and choices, and numbers into what is said and shown.
 * It never decides what a word does, and never hears or speaks a sound.
 */
export { splitCorrection } from './correction.ts';
export { digitsInWords, ordinalOfInteger, wordsOfInteger } from './integer-words.ts';
export { clauses, joinList } from './list-out.ts';
export { type Match, matchHeard, type Sayable } from './match.ts';
export { readNumber, type SpokenNumber } from './number-in.ts';
export {
  type Manner,
  sayDigits,
  sayFraction,
  sayNumber,
  showFraction,
  showNumber,
} from './number-out.ts';
export type { WantedNumber } from './number-readings.ts';
export { denies, normalise } from './plain-text.ts';
export { soundAlike } from './sound-alike.ts';
export { UNIT_IDS, unitName, unitOf, unitShown } from './units-spoken.ts';
