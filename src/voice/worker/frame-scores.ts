/** How well each sound of the model fits each frame. */
import { COSINES } from '../shared/mel.ts';
import type { Densities } from './room-densities.ts';
import { DENSITIES, type SpeechModel, STREAMS } from './speech-model.ts';

/** Of each codebook and stream so many densities count: the others add nothing. */
const NEAREST = 6;
const NOTHING = 1e-30;

/** The sounds asked for, packed by codebook so that a frame is scored in one go. */
export interface SoundSet {
  readonly sounds: Int32Array;
  /** Sound → its place in a row of scores. */
  readonly placeOf: Int32Array;
  readonly books: readonly Packed[];
}

interface Packed {
  readonly book: number;
  readonly places: Int32Array;
  /** Stream × density × place in the codebook. */
  readonly weights: Float32Array;
}

export function soundSet(model: SpeechModel, wanted: Iterable<number>): SoundSet {
  const sounds = Int32Array.from(new Set(wanted));
  const placeOf = new Int32Array(model.sounds);
  const byBook = new Map<number, number[]>();
  sounds.forEach((sound, place) => {
    placeOf[sound] = place;
    const book = model.bookOf[sound] ?? 0;
    byBook.set(book, [...(byBook.get(book) ?? []), place]);
  });
  const books = [...byBook].map(([book, places]) => pack(model, sounds, book, places));
  return { sounds, placeOf, books };
}

function pack(
  model: SpeechModel,
  sounds: Int32Array,
  book: number,
  places: readonly number[],
): Packed {
  const weights = new Float32Array(STREAMS * DENSITIES * places.length);
  for (let stream = 0; stream < STREAMS; stream++) {
    for (let density = 0; density < DENSITIES; density++) {
      const row = (stream * DENSITIES + density) * places.length;
      places.forEach((place, k) => {
        weights[row + k] = model.weight(sounds[place] ?? 0, stream, density);
      });
    }
  }
  return { book, places: Int32Array.from(places), weights };
}

/** A row a frame: natural logarithms, the best sound of the frame at 0. `tops` gets what was taken off. */
export function frameScores(
  set: SoundSet,
  densities: Densities,
  frames: readonly Float32Array[],
): { readonly rows: readonly Float32Array[]; readonly tops: Float64Array } {
  const tops = new Float64Array(frames.length);
  const scorer = new FrameScorer(set, densities);
  const rows = frames.map((frame, t) => {
    const row = scorer.row(frame);
    const top = row.reduce((most, score) => Math.max(most, score), Number.NEGATIVE_INFINITY);
    tops[t] = top;
    return row.map((score) => score - top);
  });
  return { rows, tops };
}

class FrameScorer {
  /** The nearest densities of the codebook and stream at hand, best first. */
  private readonly near = new Float64Array(NEAREST);
  private readonly which = new Int32Array(NEAREST);
  private found = 0;
  private readonly sums: Float64Array;

  constructor(
    private readonly set: SoundSet,
    private readonly densities: Densities,
  ) {
    const most = Math.max(1, ...set.books.map(({ places }) => places.length));
    this.sums = new Float64Array(most);
  }

  row(frame: Float32Array): Float32Array {
    const row = new Float32Array(this.set.sounds.length);
    for (const packed of this.set.books) {
      for (let stream = 0; stream < STREAMS; stream++) {
        this.findNearest(packed.book * STREAMS + stream, frame, stream * COSINES);
        this.add(packed, stream, row);
      }
    }
    return row;
  }

  private findNearest(group: number, frame: Float32Array, offset: number): void {
    const { means, inverse, least } = this.densities;
    this.found = 0;
    for (let density = 0; density < DENSITIES; density++) {
      const row = group * DENSITIES + density;
      const worst = this.found < NEAREST ? Number.NEGATIVE_INFINITY : (this.near[NEAREST - 1] ?? 0);
      let log = least[row] ?? 0;
      let at = row * COSINES;
      const end = at + COSINES;
      for (let i = offset; at < end && log > worst; at++, i++) {
        const off = (frame[i] ?? 0) - (means[at] ?? 0);
        log -= off * off * (inverse[at] ?? 0);
      }
      if (log > worst) this.insert(log, density);
    }
  }

  private insert(log: number, density: number): void {
    let place = this.found < NEAREST ? this.found++ : NEAREST - 1;
    for (; place > 0 && (this.near[place - 1] ?? 0) < log; place--) {
      this.near[place] = this.near[place - 1] ?? 0;
      this.which[place] = this.which[place - 1] ?? 0;
    }
    this.near[place] = log;
    this.which[place] = density;
  }

  /** Adds the stream's logarithm to each sound of the codebook. */
  private add({ places, weights }: Packed, stream: number, row: Float32Array): void {
    const { sums } = this;
    const count = places.length;
    const best = this.near[0] ?? 0;
    sums.fill(NOTHING, 0, count);
    for (let n = 0; n < this.found; n++) {
      const share = Math.exp((this.near[n] ?? 0) - best);
      const from = (stream * DENSITIES + (this.which[n] ?? 0)) * count;
      for (let k = 0; k < count; k++) {
        sums[k] = (sums[k] ?? 0) + share * (weights[from + k] ?? 0);
      }
    }
    for (let k = 0; k < count; k++) {
      const place = places[k] ?? 0;
      row[place] = (row[place] ?? 0) + best + Math.log(sums[k] ?? 1);
    }
  }
}
