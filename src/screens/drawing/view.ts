/** The piece itself: upper half cut open, lower half from outside, the stock round it, the axis. */
import type { Area, Line, Pen, Place, ToPicture } from './marks.ts';
import { nowAreas, nowLines } from './now-view.ts';
import type { CrossHole, Piece, PieceState } from './piece.ts';
import { pieceLength, stateOf } from './piece.ts';
import type { Segment } from './profile.ts';
import { innerProfile, outerProfile, sectionProfile } from './profile.ts';
import { halfCircle } from './spans.ts';

export interface View {
  readonly lines: readonly Line[];
  readonly areas: readonly Area[];
  readonly section: readonly Place[];
}

/** How much of the stock is drawn beyond the piece, in mm, and whether it is cut short there. */
export interface Overhang {
  readonly left: number;
  readonly broken: boolean;
}

/** At most this part of the piece's length is drawn of the stock left in the chuck. */
const STOCK_SHOWN = 0.22;

export function overhangOf(piece: Piece): Overhang {
  const length = pieceLength(piece);
  const beyond = Math.max(piece.stock.length - length - (piece.stock.facing ?? 0), 0);
  const shown = Math.min(beyond, STOCK_SHOWN * length);
  return { left: shown, broken: beyond > shown };
}

/** All lines of the view, in picture units. */
export function viewOf(piece: Piece, state: PieceState, to: ToPicture): View {
  const [outer, inner] = [outerProfile(piece), innerProfile(piece)];
  const pen = penFor(state);
  return {
    lines: [
      ...stockLines(piece, to),
      ...threadLines(piece, pen, to),
      ...profileLines(outer, pen, to, 1),
      ...profileLines(outer, pen, to, -1),
      ...profileLines(inner, pen, to, 1),
      ...stepLines(outer, inner, pen, to),
      ...crossLines(piece, state, pen, to),
      ...nowLines(piece, state, to),
      axisLine(piece, to),
    ],
    areas: [...nowAreas(piece, state, to), ...crossAreas(piece, state, to)],
    section: sectionOutline(outer, sectionProfile(piece), to),
  };
}

function penFor(state: PieceState): (feature: string | null) => Pen {
  return (feature) => {
    if (feature === null) return 'firm';
    return stateOf(state, feature) === 'done' ? 'firm' : 'planned';
  };
}

function sectionOutline(
  outer: readonly Segment[],
  inner: readonly Segment[],
  to: ToPicture,
): readonly Place[] {
  const over = outer.flatMap(({ from, r1, to: end, r2 }) => [to(from, r1), to(end, r2)]);
  const under = inner.flatMap(({ from, r1, to: end, r2 }) => [to(from, r1), to(end, r2)]);
  return [...over, ...under.reverse()];
}

/** Outlines along the axis, above it (`half` 1) or below. */
function profileLines(
  profile: readonly Segment[],
  pen: (feature: string | null) => Pen,
  to: ToPicture,
  half: 1 | -1,
): readonly Line[] {
  return profile
    .filter(({ r1, r2 }) => r1 > 0 || r2 > 0)
    .map(({ from, to: end, r1, r2, feature }) => ({
      pen: pen(feature),
      points: [to(from, half * r1), to(end, half * r2)],
      feature: feature ?? undefined,
    }));
}

/**
 * Edges square to the axis. Above it the cut hides all but the steps of the outline and what is seen in
 * the bore; below, each edge is seen whole.
 */
function stepLines(
  outer: readonly Segment[],
  inner: readonly Segment[],
  pen: (feature: string | null) => Pen,
  to: ToPicture,
): readonly Line[] {
  const outside = corners(outer).flatMap(({ z, before, after, feature }) => [
    ...(before === after ? [] : [line(pen(feature), to(z, before), to(z, after), feature)]),
    line(pen(feature), to(z, 0), to(z, -Math.max(before, after)), feature),
  ]);
  const bored = corners(inner)
    .filter(({ before, after }) => Math.max(before, after) > 0)
    .map(({ z, before, after, feature }) =>
      line(pen(feature), to(z, 0), to(z, Math.max(before, after)), feature),
    );
  return [...outside, ...faces(outer, inner, pen, to), ...bored];
}

/** Both end faces, above the axis. */
function faces(
  outer: readonly Segment[],
  inner: readonly Segment[],
  pen: (feature: string | null) => Pen,
  to: ToPicture,
): readonly Line[] {
  const [first, last] = [outer[0], outer.at(-1)];
  if (!first || !last || inner.length === 0) return [];
  return [
    line(pen(first.feature), to(0, 0), to(0, first.r1), first.feature),
    line(pen(last.feature), to(last.to, 0), to(last.to, last.r2), last.feature),
  ];
}

interface Corner {
  readonly z: number;
  readonly before: number;
  readonly after: number;
  readonly feature: string | null;
}

/** Where neighbouring segments meet at an angle, and both ends; the smaller side made the edge. */
function corners(profile: readonly Segment[]): readonly Corner[] {
  const [first, last] = [profile[0], profile.at(-1)];
  if (!first || !last) return [];
  const ends: Corner[] = [
    { z: first.from, before: first.r1, after: first.r1, feature: first.feature },
    { z: last.to, before: last.r2, after: last.r2, feature: last.feature },
  ];
  const between = profile.slice(1).flatMap((after, index) => {
    const before = profile[index];
    if (!before || (before.r2 === after.r1 && slope(before) === slope(after))) return [];
    const feature = before.r2 <= after.r1 ? before.feature : after.feature;
    return [{ z: after.from, before: before.r2, after: after.r1, feature }];
  });
  return [...ends, ...between];
}

function slope({ from, to, r1, r2 }: Segment): number {
  return (r2 - r1) / (to - from);
}

/** Roots of an outside thread, crests of an inside one, thin; the end of the full thread firm (ISO 6410-1). */
function threadLines(
  piece: Piece,
  pen: (feature: string | null) => Pen,
  to: ToPicture,
): readonly Line[] {
  return piece.features.flatMap((feature) => {
    if (feature.kind !== 'thread') return [];
    const [major, minor] = [feature.majorDiameter / 2, feature.minorDiameter / 2];
    const { id, from, to: end, internal } = feature;
    const thin = internal ? [major] : [minor, -minor];
    return [
      ...thin.map((r) => line('thin' as const, to(from, r), to(end, r), id)),
      line(pen(id), to(end, minor), to(end, major), id),
    ];
  });
}

/** A hole across the axis is a circle in both halves, with a centre line over the piece. */
function crossLines(
  piece: Piece,
  state: PieceState,
  pen: (feature: string | null) => Pen,
  to: ToPicture,
): readonly Line[] {
  return piece.features.flatMap((feature) => {
    if (feature.kind !== 'cross-hole') return [];
    const own = stateOf(state, feature.id) === 'now' ? 'now' : pen(feature.id);
    const beyond = piece.stock.diameter / 2;
    return [
      { pen: own, points: circle(feature, to), feature: feature.id },
      line('centre', to(feature.from, beyond), to(feature.from, -beyond), feature.id),
    ];
  });
}

function crossAreas(piece: Piece, state: PieceState, to: ToPicture): readonly Area[] {
  return piece.features.flatMap((feature) =>
    feature.kind === 'cross-hole' && stateOf(state, feature.id) === 'now'
      ? [{ feature: feature.id, points: circle(feature, to) }]
      : [],
  );
}

/** Closed: it ends where it begins. */
function circle(feature: CrossHole, to: ToPicture): readonly Place[] {
  const upper = halfCircle(feature);
  const lower = upper.slice(0, -1).reverse();
  return [...upper.map(({ z, r }) => to(z, r)), ...lower.map(({ z, r }) => to(z, -r))];
}

function stockLines(piece: Piece, to: ToPicture): readonly Line[] {
  const r = piece.stock.diameter / 2;
  const overhang = overhangOf(piece);
  const [right, left] = [-(piece.stock.facing ?? 0), pieceLength(piece) + overhang.left];
  const end = overhang.broken ? zigzag(left, r, to) : [to(left, r), to(left, -r)];
  return [
    { pen: 'stock', points: [to(left, r), to(right, r), to(right, -r), to(left, -r)] },
    { pen: overhang.broken ? 'thin' : 'stock', points: end },
  ];
}

/** The thin zigzag of a view that is cut short (ISO 128-2). */
function zigzag(z: number, r: number, to: ToPicture): readonly Place[] {
  const beyond = r * 1.12;
  const tooth = r * 0.16;
  return [
    to(z, beyond),
    to(z, tooth),
    to(z + tooth, tooth * 0.6),
    to(z - tooth, -tooth * 0.6),
    to(z, -tooth),
    to(z, -beyond),
  ];
}

function axisLine(piece: Piece, to: ToPicture): Line {
  const beyond = pieceLength(piece) * 0.03 + piece.stock.diameter * 0.06;
  const left = pieceLength(piece) + overhangOf(piece).left;
  return {
    pen: 'centre',
    points: [to(left + beyond, 0), to(-(piece.stock.facing ?? 0) - beyond, 0)],
  };
}

function line(pen: Pen, a: Place, b: Place, feature: string | null): Line {
  return { pen, points: [a, b], feature: feature ?? undefined };
}
