/** Judges whether what the grammar found was really said, against what free phones make of the same sound. Pure. */

export interface ScoredSegment {
  readonly word: string;
  readonly from: number;
  readonly to: number;
  readonly score: number;
}

export interface Judged {
  readonly text: string;
  /** How much better than free phones the words explain the sound, per frame; higher is surer. */
  readonly margin: number;
  /** The same for the worst of the words. */
  readonly worst: number;
  /** Part of the loud frames that no word covers, 0 to 1. */
  readonly uncovered: number;
}

/** Words as the dictionary writes further ways: "four(2)". Fillers stand in brackets. */
export function plainWord(word: string): string {
  return word.replace(/\(\d+\)$/, '');
}

export function isFiller(word: string): boolean {
  return /^[<[(+]/.test(word);
}

/** `loud` tells for each frame whether it stands above the room. Null when no word was found. */
export function judge(
  found: readonly ScoredSegment[],
  free: readonly ScoredSegment[],
  loud: readonly boolean[],
): Judged | null {
  const words = found.filter((segment) => !isFiller(segment.word));
  if (words.length === 0) return null;
  const freeScores = scorePerFrame(free);
  const margins = words.map((word) => ({
    frames: word.to - word.from,
    gain: word.score - sum(freeScores.slice(word.from, word.to)),
  }));
  const frames = sum(margins.map((m) => m.frames));
  return {
    text: words.map((segment) => plainWord(segment.word)).join(' '),
    margin: sum(margins.map((m) => m.gain)) / Math.max(1, frames),
    worst: Math.min(...margins.map((m) => m.gain / Math.max(1, m.frames))),
    uncovered: uncoveredPart(words, loud),
  };
}

function scorePerFrame(segments: readonly ScoredSegment[]): readonly number[] {
  const scores: number[] = [];
  for (const { from, to, score } of segments) {
    for (let frame = from; frame < to; frame++) scores[frame] = score / (to - from);
  }
  return scores;
}

function uncoveredPart(words: readonly ScoredSegment[], loud: readonly boolean[]): number {
  const all = loud.filter(Boolean).length;
  const outside = loud.filter(
    (isLoud, frame) => isLoud && !words.some((word) => frame >= word.from && frame < word.to),
  ).length;
  return all === 0 ? 1 : outside / all;
}

function sum(values: readonly number[]): number {
  return values.reduce((total, value) => total + (value ?? 0), 0);
}
