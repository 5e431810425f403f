/**
 * The model's Gaussians as speech in this room's noise has them: means by log-add as in `room-model.ts`, slopes
 * and variances by the first term of the Taylor series around them (Moreno, Raj and Stern, ICASSP 1996; Acero,
 * Deng, Kristjansson and Zhang, ICSLP 2000). The streams have Gaussians of their own, so slopes shrink by the
 * mean share of speech in their codebook.
 */
import { BANDS, bandsOf, COSINES, cosinesOf } from '../shared/mel.ts';
import { DENSITIES, type SpeechModel, STREAMS } from './speech-model.ts';

export interface RoomNoise {
  /** Mean and variance of the noise's logarithm in each mel band. */
  readonly mean: Float64Array;
  readonly variance: Float64Array;
}

/** Ready to be summed: `least` is the logarithm at the mean, `inverse` half the inverse variance. */
export interface Densities {
  readonly means: Float32Array;
  readonly inverse: Float32Array;
  readonly least: Float32Array;
}

const BOOK = STREAMS * DENSITIES * COSINES;
const STREAM = DENSITIES * COSINES;
const LEAST_VARIANCE = 1e-4;
/** A slope is a difference of two frames, a curvature of four. */
const FRAMES_IN = [1, 2, 4];

/** `channel` is the mean of clean speech at this microphone; without noise only that is laid in. */
export function densitiesFor(
  model: SpeechModel,
  noise: RoomNoise | null,
  channel: Float64Array,
): Densities {
  const means = model.means.slice();
  const variances = model.variances.slice();
  const occupancy = occupancies(model);
  for (let book = 0; book < model.phones.length; book++) {
    const rows = { means, variances, at: book * BOOK };
    if (noise) moveBook(rows, noise, channel, occupancy[book] ?? new Float64Array(DENSITIES));
    else addChannel(rows, channel);
  }
  return ready(means, variances);
}

const plain = new WeakMap<SpeechModel, Densities>();

/** Only the means of these codebooks, and of them what is no slope: enough to compare one fit with another, and quick. */
export function quickDensities(
  model: SpeechModel,
  books: Iterable<number>,
  noise: Float64Array | null,
  channel: Float64Array,
): Densities {
  const densities = plain.get(model) ?? ready(model.means, model.variances);
  plain.set(model, densities);
  const means = model.means.slice();
  for (const book of books) {
    const rows = { means, variances: model.variances, at: book * BOOK };
    if (!noise) addChannel(rows, channel);
    else {
      for (let row = 0; row < STREAM; row += COSINES)
        moveMean(means, rows.at + row, noise, channel);
    }
  }
  return { ...densities, means };
}

interface Rows {
  readonly means: Float32Array;
  readonly variances: Float32Array;
  readonly at: number;
}

function addChannel({ means, at }: Rows, channel: Float64Array): void {
  for (let i = 0; i < STREAM; i++) {
    means[at + i] = (means[at + i] ?? 0) + (channel[i % COSINES] ?? 0);
  }
}

function moveBook(
  { means, variances, at }: Rows,
  noise: RoomNoise,
  channel: Float64Array,
  occupancy: Float64Array,
): void {
  const shared = new Float64Array(BANDS);
  for (let density = 0; density < DENSITIES; density++) {
    const row = at + density * COSINES;
    const share = moveMean(means, row, noise.mean, channel);
    new Mixer(share, noise.variance).spread(variances, row, 1);
    for (let j = 0; j < BANDS; j++) {
      shared[j] = (shared[j] ?? 0) + (occupancy[density] ?? 0) * (share[j] ?? 0);
    }
  }
  const mixer = new Mixer(shared, noise.variance);
  for (let row = STREAM; row < BOOK; row += COSINES) {
    mixer.shrink(means, at + row);
    mixer.spread(variances, at + row, FRAMES_IN[Math.floor(row / STREAM)] ?? 1);
  }
}

/** Moves one mean; returns the share of speech in each band. */
function moveMean(
  means: Float32Array,
  at: number,
  noise: Float64Array,
  channel: Float64Array,
): Float64Array {
  const share = new Float64Array(BANDS);
  const added = new Float64Array(BANDS);
  for (let i = 0; i < COSINES; i++) means[at + i] = (means[at + i] ?? 0) + (channel[i] ?? 0);
  for (let j = 0; j < BANDS; j++) {
    let over = noise[j] ?? 0;
    for (let i = 0; i < COSINES; i++) over -= (means[at + i] ?? 0) * (TO_BANDS[i * BANDS + j] ?? 0);
    share[j] = 1 / (1 + Math.exp(over));
    added[j] = over > 30 ? over : Math.log1p(Math.exp(over));
  }
  // Only the difference is turned back into cosines: what the bands cannot show stays as it was.
  for (let i = 0; i < COSINES; i++) {
    let sum = means[at + i] ?? 0;
    for (let j = 0; j < BANDS; j++) sum += (added[j] ?? 0) * (TO_COSINES[j * COSINES + i] ?? 0);
    means[at + i] = sum;
  }
  return share;
}

const unit = (length: number, one: number) =>
  Float64Array.from({ length }, (_, i) => (i === one ? 1 : 0));
/** Band → cosines and cosine → bands, row by row. */
const TO_COSINES = Float64Array.from(
  Array.from({ length: BANDS }, (_, j) => [...cosinesOf(unit(BANDS, j))]).flat(),
);
const TO_BANDS = Float64Array.from(
  Array.from({ length: COSINES }, (_, i) => [...bandsOf(unit(COSINES, i))]).flat(),
);

/** What each band adds to the change of cosine i by cosine k: cosine i × cosine k × band. */
const CHANGES = Float64Array.from({ length: COSINES * COSINES * BANDS }, (_, n) => {
  const [i, k, j] = [Math.floor(n / (COSINES * BANDS)), Math.floor(n / BANDS) % COSINES, n % BANDS];
  return (TO_COSINES[j * COSINES + i] ?? 0) * (TO_BANDS[k * BANDS + j] ?? 0);
});

/** Mixes variances of speech and of noise by the share of speech in each band. */
class Mixer {
  /** How each cosine of speech changes each cosine of what is heard. */
  private readonly changes = new Float64Array(COSINES * COSINES);
  private readonly ofNoise = new Float64Array(COSINES);

  constructor(share: Float64Array, noise: Float64Array) {
    let at = 0;
    for (let cell = 0; cell < COSINES * COSINES; cell++) {
      let change = 0;
      for (let j = 0; j < BANDS; j++) change += (CHANGES[at++] ?? 0) * (share[j] ?? 0);
      this.changes[cell] = change;
    }
    for (let i = 0; i < COSINES; i++) {
      let sum = 0;
      for (let j = 0; j < BANDS; j++) {
        const change = (TO_COSINES[j * COSINES + i] ?? 0) * (1 - (share[j] ?? 0));
        sum += change * change * (noise[j] ?? 0);
      }
      this.ofNoise[i] = sum;
    }
  }

  /** A slope in noise: only speech moves. */
  shrink(slopes: Float32Array, at: number): void {
    const before = slopes.slice(at, at + COSINES);
    for (let i = 0; i < COSINES; i++) {
      let sum = 0;
      for (let k = 0; k < COSINES; k++) {
        sum += (this.changes[i * COSINES + k] ?? 0) * (before[k] ?? 0);
      }
      slopes[at + i] = sum;
    }
  }

  spread(variances: Float32Array, at: number, frames: number): void {
    const before = variances.slice(at, at + COSINES);
    for (let i = 0; i < COSINES; i++) {
      let sum = frames * (this.ofNoise[i] ?? 0);
      for (let k = 0; k < COSINES; k++) {
        sum += (this.changes[i * COSINES + k] ?? 0) ** 2 * (before[k] ?? 0);
      }
      variances[at + i] = sum;
    }
  }
}

function ready(means: Float32Array, variances: Float32Array): Densities {
  const least = new Float32Array(means.length / COSINES);
  const inverse = variances.map((variance, i) => {
    const kept = Math.max(LEAST_VARIANCE, variance);
    const row = Math.floor(i / COSINES);
    least[row] = (least[row] ?? 0) - 0.5 * Math.log(2 * Math.PI * kept);
    return 0.5 / kept;
  });
  return { means, inverse, least };
}

const known = new WeakMap<SpeechModel, readonly Float64Array[]>();

/** How much each static density of a codebook is used; sums to one. */
function occupancies(model: SpeechModel): readonly Float64Array[] {
  const kept = known.get(model);
  if (kept) return kept;
  const books = model.phones.map(() => new Float64Array(DENSITIES));
  for (let sound = 0; sound < model.sounds; sound++) {
    const book = books[model.bookOf[sound] ?? 0];
    if (!book) continue;
    for (let d = 0; d < DENSITIES; d++) book[d] = (book[d] ?? 0) + model.weight(sound, 0, d);
  }
  const shares = books.map((book) => {
    const sum = book.reduce((total, part) => total + part, 0);
    return book.map((part) => part / Math.max(1e-9, sum));
  });
  known.set(model, shares);
  return shares;
}
