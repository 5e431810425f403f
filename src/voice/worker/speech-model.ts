/**
 * The acoustic model read from its files, so that a second opinion can be worked out beside the engine's.
 * Formats as read in the engine's own source: bin_mdef.c, ms_gauden.c, ptm_mgau.c, tmat.c of pocketsphinx.
 */
import { COSINES } from '../shared/mel.ts';
import type { EngineParts } from './engine.ts';

/** Static, slope and curvature. */
export const STREAMS = 3;
export const DENSITIES = 128;
export const STATES = 3;
/** Weights are kept as whole steps of this, negated natural logarithms. */
const WEIGHT_STEP = 1024 * Math.log(1.0001);
const LEAST_WEIGHT = 159;

/** Where in a word a phone stands; the numbers are the file's. */
export const INSIDE = 0;
export const BEGIN = 1;
export const END = 2;
export const SINGLE = 3;
const POSITIONS = [INSIDE, BEGIN, END, SINGLE];

/** A phone between its neighbours, all as indices into `phones`. */
export interface Neighboured {
  readonly position: number;
  readonly phone: number;
  readonly left: number;
  readonly right: number;
}

export interface SpeechModel {
  readonly phones: readonly string[];
  readonly silence: number;
  isFiller(phone: number): boolean;
  /** Codebook × stream × density × cosine. */
  readonly means: Float32Array;
  readonly variances: Float32Array;
  readonly sounds: number;
  /** The codebook of each sound (tied state). */
  readonly bookOf: Uint8Array;
  /** Probability of a density in a sound's stream. */
  weight(sound: number, stream: number, density: number): number;
  /** The three sounds of a phone, and of the nearest kept phone between those neighbours. */
  soundsOf(phone: number): readonly number[];
  soundsBetween(phone: Neighboured): readonly number[];
  /** Natural logarithms of staying in a state of a phone and of leaving it. */
  stay(phone: number, state: number): number;
  leave(phone: number, state: number): number;
}

/** The phones that are speech: neither silence nor noise. */
export function speechPhones(model: SpeechModel): readonly number[] {
  return model.phones.map((_, i) => i).filter((phone) => !model.isFiller(phone));
}

const read = new WeakMap<EngineParts['model'], SpeechModel>();

/** Reads the model once. Throws when a file is not of the kind that is known. */
export function readSpeechModel(files: EngineParts['model']): SpeechModel {
  const model = read.get(files) ?? readAnew(files);
  read.set(files, model);
  return model;
}

function readAnew(files: EngineParts['model']): SpeechModel {
  const names = readNames(files.mdef);
  const weights = weightSteps(files.sendump);
  return {
    ...names,
    means: readGaussians(files.means, names.phones.length),
    variances: readGaussians(files.variances, names.phones.length),
    weight: (sound, stream, density) =>
      WEIGHTS[weights[(stream * DENSITIES + density) * names.sounds + sound] ?? 255] ?? 0,
    ...readSteps(files.transition_matrices),
  };
}

function viewOf(file: Uint8Array): DataView {
  return new DataView(file.buffer, file.byteOffset, file.byteLength);
}

const HEAD_END = 'endhdr\n';

/** Behind the text head and the byte-order mark. */
function bodyAt(file: Uint8Array): number {
  const end = String.fromCharCode(...file.subarray(0, 200)).indexOf(HEAD_END);
  if (end < 0) throw new Error('The speech model has no head.');
  return end + HEAD_END.length + 4;
}

function readGaussians(file: Uint8Array, books: number): Float32Array {
  const view = viewOf(file);
  const from = bodyAt(file) + (3 + STREAMS + 1) * 4;
  const length = books * STREAMS * DENSITIES * COSINES;
  return Float32Array.from({ length }, (_, i) => view.getFloat32(from + 4 * i, true));
}

/** Rows of stream and density, a byte a sound. */
function weightSteps(file: Uint8Array): Uint8Array {
  const view = viewOf(file);
  let at = 4 + view.getInt32(0, true);
  at += 4 + view.getInt32(at, true);
  for (let length = view.getInt32(at, true); length !== 0; length = view.getInt32(at, true)) {
    at += 4 + length;
  }
  return file.subarray(at + 12);
}

/** Step → probability. */
const WEIGHTS = Float32Array.from({ length: 256 }, (_, n) =>
  Math.exp(-WEIGHT_STEP * Math.min(LEAST_WEIGHT, n)),
);

function readSteps(file: Uint8Array): Pick<SpeechModel, 'stay' | 'leave'> {
  const view = viewOf(file);
  const from = bodyAt(file) + 16;
  const cells = Math.floor((file.length - from) / 4);
  const counts = Array.from({ length: cells }, (_, i) => view.getFloat32(from + 4 * i, true));
  const row = STATES + 1;
  const logs = counts.map((count, i) => {
    const first = i - (i % row);
    const sum = counts.slice(first, first + row).reduce((total, each) => total + each, 0);
    return Math.log(Math.max(1e-4, count / sum));
  });
  const step = (phone: number, state: number, to: number) =>
    logs[(phone * STATES + state) * row + to] ?? 0;
  return {
    stay: (phone, state) => step(phone, state, state),
    leave: (phone, state) => step(phone, state, state + 1),
  };
}

type Names = Pick<
  SpeechModel,
  'phones' | 'silence' | 'isFiller' | 'sounds' | 'bookOf' | 'soundsOf' | 'soundsBetween'
>;

/** Names of phones, the tree of neighbours, and which sounds each phone is made of. */
function readNames(file: Uint8Array): Names {
  const view = viewOf(file);
  const head = 12 + view.getInt32(8, true);
  const number = (i: number) => view.getInt32(head + 4 * i, true);
  const [kinds, phoneCount, sounds, rows, nodes] = [0, 1, 4, 6, 8].map(number) as [
    number,
    number,
    number,
    number,
    number,
  ];
  const named = readTexts(file, head + 40, kinds);
  const entries = named.end + 8 * nodes;
  const table = entries + 12 * phoneCount + 4;
  if (rows <= 0) throw new Error('The speech model names no sounds.');
  const entry = (phone: number) => entries + 12 * phone;
  const soundsOf = (phone: number) =>
    [0, 1, 2].map((state) =>
      view.getUint16(table + 2 * (STATES * view.getInt32(entry(phone), true) + state), true),
    );
  const bookOf = new Uint8Array(sounds);
  for (let phone = 0; phone < phoneCount; phone++) {
    const book = phone < kinds ? phone : (file[entry(phone) + 9] ?? 0);
    for (const sound of soundsOf(phone)) bookOf[sound] = book;
  }
  const isFiller = (phone: number) => file[entry(phone) + 8] !== 0;
  const silence = named.texts.indexOf('SIL');
  const tree = new NeighbourTree(view, named.end, isFiller, silence);
  return {
    phones: named.texts,
    silence,
    isFiller,
    sounds,
    bookOf,
    soundsOf,
    soundsBetween: (phone) => soundsOf(tree.nearest(phone)),
  };
}

function readTexts(file: Uint8Array, from: number, count: number) {
  const texts: string[] = [];
  let at = from;
  while (texts.length < count) {
    const end = file.indexOf(0, at);
    texts.push(String.fromCharCode(...file.subarray(at, end)));
    at = end + 1;
  }
  return { texts, end: from + ((at - from + 3) & ~3) };
}

/** From position, phone, left and right neighbour to the phone's number; what is not there falls back. */
class NeighbourTree {
  constructor(
    private readonly view: DataView,
    private readonly at: number,
    private readonly isFiller: (phone: number) => boolean,
    private readonly silence: number,
  ) {}

  nearest(wanted: Neighboured): number {
    const { position, left, right } = wanted;
    const opens = position === BEGIN || position === SINGLE;
    const closes = position === END || position === SINGLE;
    const apart = {
      ...wanted,
      left: opens ? this.silence : left,
      right: closes ? this.silence : right,
    };
    return this.anywhere(wanted) ?? this.anywhere(apart) ?? wanted.phone;
  }

  private anywhere(wanted: Neighboured): number | undefined {
    const others = POSITIONS.filter((position) => position !== wanted.position);
    for (const position of [wanted.position, ...others]) {
      const found = this.exact({ ...wanted, position });
      if (found !== undefined) return found;
    }
    return undefined;
  }

  private exact({ position, phone, left, right }: Neighboured): number | undefined {
    let first = 0;
    let count = POSITIONS.length;
    for (const wanted of [position, phone, this.quiet(left), this.quiet(right)]) {
      const node = this.child(first, count, wanted);
      if (node === undefined) return undefined;
      count = this.view.getInt16(node + 2, true);
      first = this.view.getInt32(node + 4, true);
      if (count === 0) return first;
    }
    return undefined;
  }

  private child(first: number, count: number, wanted: number): number | undefined {
    for (let i = first; i < first + count; i++) {
      const node = this.at + 8 * i;
      if (this.view.getInt16(node, true) === wanted) return node;
    }
    return undefined;
  }

  private quiet(phone: number): number {
    return this.isFiller(phone) ? this.silence : phone;
  }
}
