/** Weighs the recogniser's word against patterns of the person's own voice. Pure. */

export interface Ranked {
  readonly phrase: string;
  /** Distance of the sound to the nearest pattern of this phrase. */
  readonly distance: number;
}

export interface Verdict {
  readonly text: string;
  readonly confidence: number;
}

/** Nearest pattern this much nearer than any other phrase's: clearly that phrase, or likely. */
const CLEAR = 0.8;
const LIKELY = 0.93;
/** Patterns count only when all but few of the phrases have some, else the nearest means little. */
const FEWEST = 2;

/**
 * `heard` is the recogniser's verdict, `ranked` the phrases in force that have patterns, nearest
 * first. Agreement lifts, contradiction refuses; patterns alone never carry a word: in hammering they
 * took a knock for a gate's word.
 */
export function vote(heard: Verdict, ranked: readonly Ranked[]): Verdict {
  const [first, second] = ranked;
  if (ranked.length < FEWEST || !first || !second || first.distance === Number.POSITIVE_INFINITY) {
    return heard;
  }
  const ratio = first.distance / second.distance;
  if (heard.text === first.phrase) return agree(heard, ratio);
  const known = ranked.some((entry) => entry.phrase === heard.text);
  if (known && ratio < LIKELY)
    return { text: heard.text, confidence: Math.min(heard.confidence, 0.4) };
  return heard;
}

function agree(heard: Verdict, ratio: number): Verdict {
  if (ratio >= LIKELY) return heard;
  const floor = ratio < CLEAR ? 0.8 : 0.6;
  return { text: heard.text, confidence: Math.max(heard.confidence, floor) };
}
