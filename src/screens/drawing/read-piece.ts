/** Makes a piece of features whose numbers may be missing, as they come out of a running flow. */
import type { Feature, Piece } from './piece.ts';

/** A feature as a flow writes it, its values already worked out in mm and degrees, where they are known. */
export interface LooseFeature {
  readonly kind: Feature['kind'];
  readonly id: string;
  readonly internal?: boolean | undefined;
  readonly end?: 'left' | 'right' | undefined;
  readonly from?: number | undefined;
  readonly to?: number | undefined;
  readonly depth?: number | undefined;
  readonly diameter?: number | undefined;
  readonly largeDiameter?: number | undefined;
  readonly smallDiameter?: number | undefined;
  readonly size?: number | undefined;
  readonly angle?: number | undefined;
  readonly pointAngle?: number | undefined;
  readonly designation?: string | undefined;
  readonly lower?: number | undefined;
  readonly upper?: number | undefined;
}

/** What could be drawn, and the ids of the features that lack a number so far. */
export interface ReadPiece {
  readonly piece: Piece;
  readonly missing: readonly string[];
}

/** Features with a missing number are left out and named; nothing is guessed but the usual defaults. */
export function readPiece(stock: Piece['stock'], loose: readonly LooseFeature[]): ReadPiece {
  const length = Math.max(0, ...loose.flatMap(({ to }) => (to === undefined ? [] : [to])));
  const read = loose.map((feature) => ({
    id: feature.id,
    feature: readers[feature.kind](feature, length),
  }));
  return {
    piece: { stock, features: read.flatMap(({ feature }) => (feature ? [feature] : [])) },
    missing: read.flatMap(({ id, feature }) => (feature ? [] : [id])),
  };
}

type Reader = (loose: LooseFeature, length: number) => Feature | undefined;

const readers: Readonly<Record<Feature['kind'], Reader>> = {
  cylinder: (loose) => {
    const { from = 0, to, diameter } = loose;
    if (to === undefined || diameter === undefined) return undefined;
    return { kind: 'cylinder', id: loose.id, from, to, diameter, ...limits(loose) };
  },
  groove: (loose) => {
    const { from, to, diameter } = loose;
    if (from === undefined || to === undefined || diameter === undefined) return undefined;
    return { kind: 'groove', id: loose.id, from, to, diameter, ...limits(loose) };
  },
  bore: (loose, length) => {
    const { depth, diameter, end = 'right', pointAngle } = loose;
    if (depth === undefined || diameter === undefined) return undefined;
    const from = loose.from ?? (end === 'right' ? 0 : length);
    return { kind: 'bore', id: loose.id, from, depth, diameter, end, pointAngle, ...limits(loose) };
  },
  chamfer: (loose, length) => {
    const { size, end = 'right', angle = 45 } = loose;
    if (size === undefined) return undefined;
    const at = loose.from ?? loose.to ?? (end === 'right' ? 0 : length);
    return { kind: 'chamfer', id: loose.id, at, end, size, angle, ...inside(loose) };
  },
  taper: (loose) => {
    const { from = 0, to, largeDiameter, smallDiameter, end } = loose;
    if (to === undefined || largeDiameter === undefined || smallDiameter === undefined)
      return undefined;
    return { kind: 'taper', id: loose.id, from, to, largeDiameter, smallDiameter, end };
  },
  thread: (loose) => {
    const { from = 0, to, designation = '' } = loose;
    const major = loose.largeDiameter ?? loose.diameter;
    const minor = loose.smallDiameter;
    if (to === undefined || major === undefined || minor === undefined) return undefined;
    return {
      kind: 'thread',
      id: loose.id,
      from,
      to,
      designation,
      majorDiameter: major,
      minorDiameter: minor,
      ...inside(loose),
    };
  },
  'centre-drill': (loose) => {
    const { diameter, size, depth, end = 'right' } = loose;
    return diameter === undefined
      ? undefined
      : { kind: 'centre-drill', id: loose.id, end, diameter, size, depth };
  },
  'cross-hole': (loose) => {
    const { from, diameter } = loose;
    if (from === undefined || diameter === undefined) return undefined;
    return { kind: 'cross-hole', id: loose.id, from, diameter, ...limits(loose) };
  },
};

function inside({ internal }: LooseFeature) {
  return internal ? { internal } : {};
}

function limits({ lower, upper }: LooseFeature) {
  return lower === undefined || upper === undefined ? {} : { lower, upper };
}
