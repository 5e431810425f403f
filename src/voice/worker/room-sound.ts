/** How the room without speech sounds: a small mixture of Gaussians over its frames, blows and all. Pure. */
import { FEATURES } from './frame-features.ts';

export interface RoomSound {
  /** Natural logarithm of how likely the frame is as a sound of the room. */
  likelihood(frame: Float32Array): number;
}

const PARTS = 8;
const FEWEST_FRAMES = 100;
const ROUNDS = 6;
/** No narrower than this share of the whole, and than this. */
const NARROWEST_SHARE = 0.1;
const NARROWEST = 0.5;

/** Fits by expectation and maximisation, from frames sorted by loudness; null for too few frames. */
export function roomSound(frames: readonly Float32Array[]): RoomSound | null {
  if (frames.length < FEWEST_FRAMES) return null;
  const whole = spreadOf(frames);
  let parts = firstParts(frames, whole);
  for (let round = 0; round < ROUNDS; round++) parts = refined(parts, frames, whole);
  return { likelihood: (frame) => Math.max(...parts.map((part) => logOf(part, frame))) };
}

interface Part {
  readonly mean: Float64Array;
  /** Half of the inverse variance. */
  readonly inverse: Float64Array;
  readonly least: number;
}

function part(
  mean: Float64Array,
  variance: Float64Array,
  weight: number,
  whole: Float64Array,
): Part {
  let least = Math.log(weight + 1e-9);
  const inverse = variance.map((value, i) => {
    const kept = Math.max(value, NARROWEST_SHARE * (whole[i] ?? 0), NARROWEST);
    least -= 0.5 * Math.log(2 * Math.PI * kept);
    return 0.5 / kept;
  });
  return { mean, inverse, least };
}

function logOf({ mean, inverse, least }: Part, frame: Float32Array): number {
  let log = least;
  for (let i = 0; i < FEATURES; i++) {
    const off = (frame[i] ?? 0) - (mean[i] ?? 0);
    log -= off * off * (inverse[i] ?? 0);
  }
  return log;
}

function firstParts(frames: readonly Float32Array[], whole: Float64Array): readonly Part[] {
  const sorted = [...frames].sort((a, b) => (a[0] ?? 0) - (b[0] ?? 0));
  const size = sorted.length / PARTS;
  return Array.from({ length: PARTS }, (_, k) => {
    const own = sorted.slice(Math.floor(k * size), Math.floor((k + 1) * size));
    return part(meanOfFrames(own), whole, 1 / PARTS, whole);
  });
}

function meanOfFrames(frames: readonly Float32Array[]): Float64Array {
  const mean = new Float64Array(FEATURES);
  for (const frame of frames) {
    for (let i = 0; i < FEATURES; i++) mean[i] = (mean[i] ?? 0) + (frame[i] ?? 0) / frames.length;
  }
  return mean;
}

function spreadOf(frames: readonly Float32Array[]): Float64Array {
  const mean = meanOfFrames(frames);
  const spread = new Float64Array(FEATURES);
  for (const frame of frames) {
    for (let i = 0; i < FEATURES; i++) {
      spread[i] = (spread[i] ?? 0) + ((frame[i] ?? 0) - (mean[i] ?? 0)) ** 2 / frames.length;
    }
  }
  return spread;
}

class Sums {
  count = 0;
  private readonly first = new Float64Array(FEATURES);
  private readonly second = new Float64Array(FEATURES);

  take(frame: Float32Array, share: number): void {
    this.count += share;
    for (let i = 0; i < FEATURES; i++) {
      const value = frame[i] ?? 0;
      this.first[i] = (this.first[i] ?? 0) + share * value;
      this.second[i] = (this.second[i] ?? 0) + share * value * value;
    }
  }

  part(all: number, whole: Float64Array): Part {
    const mean = this.first.map((sum) => sum / this.count);
    const variance = this.second.map((sum, i) => sum / this.count - (mean[i] ?? 0) ** 2);
    return part(mean, variance, this.count / all, whole);
  }
}

function refined(
  parts: readonly Part[],
  frames: readonly Float32Array[],
  whole: Float64Array,
): readonly Part[] {
  const sums = parts.map(() => new Sums());
  for (const frame of frames) {
    const logs = parts.map((each) => logOf(each, frame));
    const most = Math.max(...logs);
    const shares = logs.map((log) => Math.exp(log - most));
    const total = shares.reduce((sum, share) => sum + share, 0);
    shares.forEach((share, k) => {
      if (share > 1e-4 * total) sums[k]?.take(frame, share / total);
    });
  }
  return sums.filter(({ count }) => count >= 2).map((each) => each.part(frames.length, whole));
}
