/** Each feature as a radius over a stretch of the axis: what it leaves of the piece, or takes from inside. */
import type { Bore, CentreDrill, CrossHole, Feature, Piece, Taper } from './piece.ts';
import { pieceLength } from './piece.ts';

/** Radii at points along the axis, straight in between; positions rise. All in mm. */
export interface Span {
  readonly feature: string;
  readonly points: readonly { readonly z: number; readonly r: number }[];
}

/** What outside features leave standing. */
export function outerSpans(piece: Piece): readonly Span[] {
  return piece.features.flatMap((feature) => outer(feature) ?? []);
}

/** What inside features take away, cut off at the ends of the piece. */
export function innerSpans(piece: Piece): readonly Span[] {
  const length = pieceLength(piece);
  return piece.features.flatMap((feature) => {
    const span = inner(feature, length);
    return span === undefined ? [] : [clipped(span, length)];
  });
}

/** What holes across the axis leave open in the plane of the paper: the upper half of each circle. */
export function crossSpans(piece: Piece): readonly Span[] {
  return piece.features.flatMap((feature) =>
    feature.kind === 'cross-hole' ? [{ feature: feature.id, points: halfCircle(feature) }] : [],
  );
}

/** Straight stretches in a half circle: at this number no eye tells it from a round one. */
const STRETCHES = 32;

/** From its right end over the top to its left one, in mm. */
export function halfCircle({ from, diameter }: CrossHole): Span['points'] {
  return Array.from({ length: STRETCHES + 1 }, (_, index) => {
    const turned = (Math.PI * index) / STRETCHES;
    const [along, up] = [Math.cos(turned), Math.sin(turned)];
    const ends = index === 0 || index === STRETCHES;
    return { z: from - (diameter / 2) * along, r: ends ? 0 : (diameter / 2) * up };
  });
}

/** Radius of a span at `z`, or undefined outside it. */
export function radiusAt({ points }: Span, z: number): number | undefined {
  for (let i = 1; i < points.length; i++) {
    const [a, b] = [points[i - 1], points[i]];
    if (a === undefined || b === undefined || z < a.z || z > b.z || a.z === b.z) continue;
    return a.r + ((b.r - a.r) * (z - a.z)) / (b.z - a.z);
  }
  return undefined;
}

function outer(feature: Feature): Span | undefined {
  switch (feature.kind) {
    case 'cylinder':
    case 'groove':
      return straight(feature.id, feature.from, feature.to, feature.diameter / 2);
    case 'taper':
      return taper(feature);
    case 'thread':
      return feature.internal
        ? undefined
        : straight(feature.id, feature.from, feature.to, feature.majorDiameter / 2);
    default:
      return undefined;
  }
}

function inner(feature: Feature, length: number): Span | undefined {
  if (feature.kind === 'bore') return bore(feature);
  if (feature.kind === 'centre-drill') return centreDrill(feature, length);
  if (feature.kind === 'thread' && feature.internal)
    return straight(feature.id, feature.from, feature.to, feature.minorDiameter / 2);
  return undefined;
}

function straight(feature: string, from: number, to: number, r: number): Span {
  return {
    feature,
    points: [
      { z: from, r },
      { z: to, r },
    ],
  };
}

function taper({ id, from, to, smallDiameter, largeDiameter, end }: Taper): Span {
  const [right, left] =
    end === 'left' ? [largeDiameter, smallDiameter] : [smallDiameter, largeDiameter];
  return {
    feature: id,
    points: [
      { z: from, r: right / 2 },
      { z: to, r: left / 2 },
    ],
  };
}

/** `depth` is to the full diameter; a drill point goes beyond it. */
function bore({ id, from, depth, diameter, pointAngle, end }: Bore): Span {
  const r = diameter / 2;
  const point = pointAngle === undefined ? 0 : r / Math.tan((pointAngle * Math.PI) / 360);
  const inwards = [
    { z: 0, r },
    { z: depth, r },
    ...(point > 0 ? [{ z: depth + point, r: 0 }] : []),
  ];
  return along(id, inwards, from, end ?? 'right');
}

/** Usual proportions of a 60 degree centre drill (from memory: ISO 866, type A: countersink 2.12 times the pilot). */
const COUNTERSINK = 2.12;
const PILOT_LENGTH = 1.3;

function centreDrill({ id, end, diameter, size, depth }: CentreDrill, length: number): Span {
  const [pilot, mouth] = [diameter / 2, Math.max(size ?? COUNTERSINK * diameter, diameter) / 2];
  const cone = (mouth - pilot) / Math.tan(Math.PI / 6);
  const deep = Math.max(depth ?? cone + PILOT_LENGTH * diameter, cone);
  const inwards = [
    { z: 0, r: mouth },
    { z: cone, r: pilot },
    { z: deep, r: pilot },
    { z: deep + pilot / Math.tan(Math.PI / 3), r: 0 },
  ];
  return along(id, inwards, end === 'right' ? 0 : length, end);
}

/** Turns depths from the mouth into positions along the axis. */
function along(
  feature: string,
  inwards: Span['points'],
  from: number,
  end: 'left' | 'right',
): Span {
  const sign = end === 'right' ? 1 : -1;
  const points = inwards.map(({ z, r }) => ({ z: from + sign * z, r }));
  return { feature, points: sign === 1 ? points : points.reverse() };
}

function clipped(span: Span, length: number): Span {
  const at = (z: number) => {
    const r = radiusAt(span, z);
    return r === undefined ? [] : [{ z, r }];
  };
  const inside = span.points.filter(({ z }) => z > 0 && z < length);
  return { feature: span.feature, points: [...at(0), ...inside, ...at(length)] };
}
