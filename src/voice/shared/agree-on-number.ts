/** Brings two opinions on one number together: the engine's, and that of the numbers near it. Pure. */
import type { First, Second } from './agree.ts';
import { isSameNumber } from './near-numbers.ts';

/** The engine is surer than this only where it is right, nearly: then nothing else is asked. */
export const SURE_OF_NUMBER = 0.8;
/** Against free phones, natural logarithm a frame: what fits worse may be other talk. */
const FIT = -2.8;
/** Lead a frame at which another number is taken: instead of one that the engine takes, and of one that it refuses. */
const OTHERWISE = { taken: 0.25, refused: 0.6 };
/** Enough to be read back. */
const AGREED = 0.55;

/** A number that both find is taken; where they differ, the other one must lead far. All of it is read back. */
export function agreeOnNumber(first: First, second: Omit<Second, 'isOurs'> | null): First {
  if (!second || second.fit < FIT) return first;
  const isTaken = first.confidence >= 0.5;
  if (isSameNumber(first.text, second.phrase)) {
    return isTaken ? first : { text: first.text, confidence: AGREED };
  }
  const lead = second.lead / Math.max(1, second.frames);
  const isBetter = lead > (isTaken ? OTHERWISE.taken : OTHERWISE.refused);
  return isBetter ? { text: second.phrase, confidence: AGREED } : first;
}
