/** What is cut now: the surface that is being made, and the metal that comes off for it. */
import type { Area, Line, ToPicture } from './marks.ts';
import type { Piece, PieceState } from './piece.ts';
import { stateOf } from './piece.ts';
import type { Segment } from './profile.ts';
import { innerProfile, outerProfile } from './profile.ts';
import type { Span } from './spans.ts';
import { innerSpans, outerSpans, radiusAt } from './spans.ts';

/** The surface that is made now, over both halves for the outside, the upper one for the inside. */
export function nowLines(piece: Piece, state: PieceState, to: ToPicture): readonly Line[] {
  const now = (span: Span) => stateOf(state, span.feature) === 'now';
  const drawn = (span: Span, half: 1 | -1): Line => ({
    pen: 'now',
    points: span.points.map(({ z, r }) => to(z, half * r)),
    feature: span.feature,
  });
  return [
    ...outerSpans(piece)
      .filter(now)
      .flatMap((span) => [drawn(span, 1), drawn(span, -1)]),
    ...innerSpans(piece)
      .filter(now)
      .map((span) => drawn(span, 1)),
    ...sloped(piece, state, to),
  ];
}

/** Chamfers have no span of their own: they show where they slope the outline. */
function sloped(piece: Piece, state: PieceState, to: ToPicture): readonly Line[] {
  const chamfers = new Set(
    piece.features.flatMap(({ kind, id }) =>
      kind === 'chamfer' && stateOf(state, id) === 'now' ? [id] : [],
    ),
  );
  const of = (profile: readonly Segment[], halves: readonly (1 | -1)[]) =>
    profile
      .filter(({ feature }) => feature !== null && chamfers.has(feature))
      .flatMap(({ from, to: end, r1, r2, feature }) =>
        halves.map((half) => ({
          pen: 'now' as const,
          points: [to(from, half * r1), to(end, half * r2)],
          feature: feature ?? undefined,
        })),
      );
  return [...of(outerProfile(piece), [1, -1]), ...of(innerProfile(piece), [1])];
}

/** Metal between what stands now and what the feature leaves. */
export function nowAreas(piece: Piece, state: PieceState, to: ToPicture): readonly Area[] {
  const was = standing(piece, state);
  const outside = outerSpans(piece)
    .filter((span) => stateOf(state, span.feature) === 'now')
    .flatMap((span) => bands(span, was(span, true)).flatMap((band) => [band, mirrored(band)]));
  const inside = innerSpans(piece)
    .filter((span) => stateOf(state, span.feature) === 'now')
    .flatMap((span) => bands(span, was(span, false)));
  return [...outside, ...inside].map(({ feature, spots }) => ({
    feature,
    points: spots.map(({ z, r }) => to(z, r)),
  }));
}

interface Band {
  readonly feature: string;
  readonly spots: readonly { readonly z: number; readonly r: number }[];
}

/** The radius before this cut at the middle of a stretch: bare stock, or what earlier features left. */
function standing(piece: Piece, state: PieceState) {
  return (span: Span, outside: boolean) => {
    const done = (outside ? outerSpans(piece) : innerSpans(piece)).filter(
      (other) => stateOf(state, other.feature) === 'done' && other.feature !== span.feature,
    );
    return (z: number) => {
      const radii = done.flatMap((other) => radiusAt(other, z) ?? []);
      return outside ? Math.min(piece.stock.diameter / 2, ...radii) : Math.max(0, ...radii);
    };
  };
}

/** One band for each straight stretch of the span where metal is left to come off. */
function bands(span: Span, was: (z: number) => number): readonly Band[] {
  return span.points.slice(1).flatMap((b, index) => {
    const a = span.points[index];
    if (!a) return [];
    const before = was((a.z + b.z) / 2);
    if (Math.abs(before - (a.r + b.r) / 2) < 1e-6) return [];
    const far = { r: before };
    return [{ feature: span.feature, spots: [a, b, { z: b.z, ...far }, { z: a.z, ...far }] }];
  });
}

function mirrored({ feature, spots }: Band): Band {
  return { feature, spots: spots.map(({ z, r }) => ({ z, r: -r })) };
}
