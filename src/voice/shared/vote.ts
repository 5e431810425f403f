/** Weighs the recogniser's word against patterns of the person's own voice. Pure. */

export interface Ranked {
  readonly phrase: string;
  /** Distance of the sound to the nearest pattern of this phrase; 1 as two sayings of one phrase differ. */
  readonly distance: number;
}

export interface Verdict {
  readonly text: string;
  /** 0 to 1; below one half it does not count. */
  readonly confidence: number;
}

/** The recogniser's verdict, and what its second opinion took it for, where that is another phrase. */
export interface Heard extends Verdict {
  readonly also?: string;
}

/** No farther than this from a pattern: the same word, as two sayings of one phrase differ. */
const SAME = 1.2;
/** Still like it, when the recogniser found the same word by itself. */
const LIKE = 1.6;
/** Nearest pattern this much nearer than any other phrase's. */
const CLEAR = 0.75;
/** For patterns alone: the sound lies well inside the person's own spread, and near nothing else; talk in the room does not. */
const ALONE = { same: 1.15, clear: 0.48 };
const LIKELY = 0.93;
/** Patterns count only when several phrases have some, else the nearest means little. */
const FEWEST = 3;

/**
 * `heard` is the recogniser's verdict, `ranked` the phrases in force that have patterns, nearest first.
 * Agreement lifts, contradiction refuses. Where the recogniser is unsure, patterns carry a word with its second
 * opinion, or alone when they are clear and the sound lies within the person's own spread, as long as `mayCarry` says
 * that it is long enough to be no knock.
 */
export function vote(heard: Heard, ranked: readonly Ranked[], mayCarry = true): Verdict {
  const [first, second] = ranked;
  if (ranked.length < FEWEST || !first || !second || !Number.isFinite(first.distance)) return heard;
  const ratio = first.distance / second.distance;
  if (heard.text === first.phrase) return agreed(heard, first.distance, ratio);
  const isSure = heard.confidence >= 0.5;
  const isSeconded = heard.also === first.phrase && first.distance < SAME && ratio < CLEAR;
  const isSame = first.distance < ALONE.same && ratio < ALONE.clear;
  if (!isSure && mayCarry && (isSeconded || isSame)) {
    return { text: first.phrase, confidence: 0.75 };
  }
  const known = ranked.some((entry) => entry.phrase === heard.text);
  // Far from every pattern they are in no place to contradict: a blow fell into the word.
  const contradicts = first.distance < SAME && ratio < LIKELY;
  return known && contradicts ? refused(heard) : heard;
}

function agreed(heard: Verdict, distance: number, ratio: number): Verdict {
  if (distance > LIKE || ratio >= LIKELY) return heard;
  const floor = distance < SAME && ratio < CLEAR ? 0.9 : 0.7;
  return { text: heard.text, confidence: Math.max(heard.confidence, floor) };
}

function refused({ text, confidence }: Verdict): Verdict {
  return { text, confidence: Math.min(confidence, 0.4) };
}
