/** The outline of the finished piece above its axis, outside and inside, as straight segments. */
import type { Chamfer, Piece } from './piece.ts';
import { pieceLength } from './piece.ts';
import type { Span } from './spans.ts';
import { crossSpans, innerSpans, outerSpans, radiusAt } from './spans.ts';

/** A straight stretch: radius `r1` at `from`, `r2` at `to`, in mm; `feature` made it, null is bare stock. */
export interface Segment {
  readonly from: number;
  readonly to: number;
  readonly r1: number;
  readonly r2: number;
  readonly feature: string | null;
}

/** Two positions nearer than this are one (mm). */
const SAME = 1e-6;

/** The outside, from the right-hand face to the left one, without a gap. */
export function outerProfile(piece: Piece): readonly Segment[] {
  const cut = cover(outerSpans(piece), pieceLength(piece), piece.stock.diameter / 2, Math.min);
  return chamfered(cut, chamfers(piece, false), -1);
}

/** The inside, likewise; radius 0 where the piece is solid. */
export function innerProfile(piece: Piece): readonly Segment[] {
  const cut = cover(innerSpans(piece), pieceLength(piece), 0, Math.max);
  return chamfered(cut, chamfers(piece, true), 1);
}

/** The inner edge of the metal in the plane of the paper: the inside, and holes across it. */
export function sectionProfile(piece: Piece): readonly Segment[] {
  const spans = [...innerSpans(piece), ...crossSpans(piece)];
  return chamfered(cover(spans, pieceLength(piece), 0, Math.max), chamfers(piece, true), 1);
}

/** The larger radius next to `z`, in mm; 0 off the piece. */
export function largestAt(profile: readonly Segment[], z: number): number {
  const near = profile.flatMap((segment) => [
    ...(Math.abs(segment.from - z) < SAME ? [segment.r1] : []),
    ...(Math.abs(segment.to - z) < SAME ? [segment.r2] : []),
    ...(z > segment.from && z < segment.to ? [between(segment, z)] : []),
  ]);
  return near.length > 0 ? Math.max(...near) : 0;
}

function between({ from, to, r1, r2 }: Segment, z: number): number {
  return r1 + ((r2 - r1) * (z - from)) / (to - from);
}

/** At each place the span that goes farthest (`pick`) rules; `base` where there is none. */
function cover(
  spans: readonly Span[],
  length: number,
  base: number,
  pick: (a: number, b: number) => number,
): readonly Segment[] {
  const bends = cuts(spans, length);
  const places = [...bends, ...crossings(spans, bends)].sort((a, b) => a - b);
  const segments = places.slice(1).map((to, index) => {
    const from = places[index] ?? 0;
    const ruling = rules(spans, (from + to) / 2, base, pick);
    return {
      from,
      to,
      r1: (ruling && radiusAt(ruling, from)) ?? base,
      r2: (ruling && radiusAt(ruling, to)) ?? base,
      feature: ruling?.feature ?? null,
    };
  });
  return joined(segments);
}

/** All positions where something begins, ends or bends, and both faces. */
function cuts(spans: readonly Span[], length: number): readonly number[] {
  const bends = spans.flatMap(({ points }) => points.map(({ z }) => z));
  const inside = bends.filter((z) => z > SAME && z < length - SAME);
  const sorted = [0, ...inside, length].sort((a, b) => a - b);
  return sorted.filter((z, index) => index === 0 || z - (sorted[index - 1] ?? 0) > SAME);
}

/** Positions between two bends where one span passes another, as a drill point does a smaller bore. */
function crossings(spans: readonly Span[], bends: readonly number[]): readonly number[] {
  return bends.slice(1).flatMap((to, index) => {
    const from = bends[index] ?? to;
    const lines = spans.flatMap((span) => {
      const [r1, r2] = [radiusAt(span, from), radiusAt(span, to)];
      return r1 === undefined || r2 === undefined ? [] : [{ r1, r2 }];
    });
    return lines.flatMap((a, first) =>
      lines.slice(first + 1).flatMap((b) => {
        const [before, after] = [a.r1 - b.r1, a.r2 - b.r2];
        return before * after < 0 ? [from + ((to - from) * before) / (before - after)] : [];
      }),
    );
  });
}

function rules(
  spans: readonly Span[],
  z: number,
  base: number,
  pick: (a: number, b: number) => number,
): Span | undefined {
  let best: { span: Span | undefined; r: number } = { span: undefined, r: base };
  for (const span of spans) {
    const r = radiusAt(span, z);
    if (r !== undefined && (pick(r, best.r) !== best.r || (best.span === undefined && r === base)))
      best = { span, r };
  }
  return best.span;
}

/** Neighbours of one feature on one line become one segment. */
function joined(segments: readonly Segment[]): readonly Segment[] {
  const out: Segment[] = [];
  for (const next of segments) {
    const last = out.at(-1);
    if (last && last.feature === next.feature && level(last) && level(next) && last.r2 === next.r1)
      out[out.length - 1] = { ...last, to: next.to };
    else out.push(next);
  }
  return out;
}

function level({ r1, r2 }: Segment): boolean {
  return r1 === r2;
}

function chamfers(piece: Piece, internal: boolean): readonly Chamfer[] {
  return piece.features.flatMap((feature) =>
    feature.kind === 'chamfer' && (feature.internal ?? false) === internal ? [feature] : [],
  );
}

/** Slopes the corner of the segment that begins (right) or ends (left) where a chamfer is. */
function chamfered(
  segments: readonly Segment[],
  cornered: readonly Chamfer[],
  sign: 1 | -1,
): readonly Segment[] {
  return cornered.reduce<readonly Segment[]>(
    (all, chamfer) => all.flatMap((segment) => slope(segment, chamfer, sign)),
    segments,
  );
}

function slope(segment: Segment, chamfer: Chamfer, sign: 1 | -1): readonly Segment[] {
  const { at, end, size, angle, id } = chamfer;
  const { from, to, r1, r2 } = segment;
  const rise = sign * size * Math.tan((angle * Math.PI) / 180);
  const fits = size < to - from - SAME && Math.max(r1, r2) > 0 && Math.min(r1, r2) + rise > 0;
  if (!fits) return [segment];
  if (end === 'right' && Math.abs(from - at) < SAME) {
    const r = between(segment, from + size);
    const turn = { from, to: from + size, r1: r1 + rise, r2: r, feature: id };
    return [turn, { ...segment, from: from + size, r1: r }];
  }
  if (end === 'left' && Math.abs(to - at) < SAME) {
    const r = between(segment, to - size);
    const turn = { from: to - size, to, r1: r, r2: r2 + rise, feature: id };
    return [{ ...segment, to: to - size, r2: r }, turn];
  }
  return [segment];
}
