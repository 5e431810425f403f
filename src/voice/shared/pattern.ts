/**
 * What one saying of a phrase looked like, and how unlike another is. Pure.
 * Both are seen over the louder of the two rooms' noise: what lies under it is told by neither. Method:
 * noise masking (Klatt, ICASSP 1976) in front of time warping (Sakoe and Chiba, IEEE Trans. ASSP 26(1), 1978).
 */
import { BANDS, bandLogs } from './mel.ts';

/** Band logarithms a hundredth of a second each, and those of the room without speech at the time. */
export interface Pattern {
  readonly frames: readonly Float64Array[];
  readonly noise: Float64Array;
}

/** Noise a little above its mean still counts as noise: natural logarithm of power, 6.5 decibels. */
const OVER_NOISE = 1.5;
/** A person speaks louder or softer by up to so much, natural logarithm of power: 11 decibels. */
const MOST_GAIN = 2.5;
/** The softest band that is told apart in a room that is known to be silent. */
const SILENT = 2;
const SAMPLES_A_FRAME = 160;
const FRAMES_AROUND = 8;

/** The pattern of an utterance from its first loud frame to its last; 16 kHz. */
export function patternOf(
  samples: Int16Array,
  loud: readonly boolean[],
  noise: Float64Array | null,
): Pattern {
  const first = Math.max(0, loud.indexOf(true) - FRAMES_AROUND);
  const last = Math.max(first + 10, loud.lastIndexOf(true) + 1 + FRAMES_AROUND);
  const frames = bandLogs(samples.subarray(first * SAMPLES_A_FRAME, last * SAMPLES_A_FRAME));
  return { frames, noise: noise ?? new Float64Array(BANDS).fill(SILENT) };
}

/** How unlike two patterns are when one is stretched over the other: mean distance along the best way. */
export function patternDistance(a: Pattern, b: Pattern): number {
  const gain = Math.max(-MOST_GAIN, Math.min(MOST_GAIN, loudness(a) - loudness(b)));
  const floor = a.noise.map((value, j) => Math.max(value, (b.noise[j] ?? 0) + gain) + OVER_NOISE);
  return warped(over(a.frames, floor, 0), over(b.frames, floor, gain));
}

function over(frames: readonly Float64Array[], floor: Float64Array, gain: number): Float64Array[] {
  return frames.map((frame) => frame.map((value, j) => Math.max(value + gain, floor[j] ?? 0)));
}

/** Mean band of the loudest fifth of the frames. */
function loudness({ frames }: Pattern): number {
  const means = frames.map((frame) => frame.reduce((sum, value) => sum + value, 0) / BANDS);
  const loudest = means.sort((a, b) => b - a).slice(0, Math.max(1, Math.round(means.length / 5)));
  return loudest.reduce((sum, value) => sum + value, 0) / Math.max(1, loudest.length);
}

const MOST_STRETCH = 2.5;

function warped(a: readonly Float64Array[], b: readonly Float64Array[]): number {
  if (a.length === 0 || b.length === 0) return Number.POSITIVE_INFINITY;
  if (a.length > MOST_STRETCH * b.length || b.length > MOST_STRETCH * a.length) {
    return Number.POSITIVE_INFINITY;
  }
  let above = new Float64Array(b.length).fill(Number.POSITIVE_INFINITY);
  for (const [i, frame] of a.entries()) above = nextRow(above, i === 0, frame, b);
  return (above[b.length - 1] ?? 0) / (a.length + b.length);
}

function nextRow(
  above: Float64Array,
  isFirst: boolean,
  frame: Float64Array,
  b: readonly Float64Array[],
): Float64Array<ArrayBuffer> {
  const row = new Float64Array(b.length);
  for (const [j, other] of b.entries()) {
    const left = j > 0 ? (row[j - 1] ?? 0) : Number.POSITIVE_INFINITY;
    const diagonal = j > 0 ? (above[j - 1] ?? 0) : Number.POSITIVE_INFINITY;
    const best = isFirst && j === 0 ? 0 : Math.min(left, above[j] ?? 0, diagonal);
    row[j] = best + between(frame, other);
  }
  return row;
}

function between(a: Float64Array, b: Float64Array): number {
  let sum = 0;
  for (let i = 0; i < BANDS; i++) sum += ((a[i] ?? 0) - (b[i] ?? 0)) ** 2;
  return Math.sqrt(sum);
}
