/** Which callouts a piece needs, and from which side each diameter is taken. */
import type { DimensionText } from './dimension-text.ts';
import { calloutText, readingText } from './dimension-text.ts';
import type { DrawingWords } from './drawing-words.ts';
import type { Feature, Piece, PieceState } from './piece.ts';
import { stateOf } from './piece.ts';
import type { Segment } from './profile.ts';

/** Where on the piece, in mm: along the axis from the right face, and above it. */
export interface Spot {
  readonly z: number;
  readonly r: number;
}

export interface Callout {
  readonly feature: string;
  /** A diameter between arrows at one side, or a note whose leader comes from above. */
  readonly side: 'right' | 'left' | 'over';
  /** Both edges of an outside diameter; the upper one of a bore in half section; the spot of a note. */
  readonly edges: readonly Spot[];
  readonly text: DimensionText;
}

const SAME = 1e-6;

/** The callouts of a piece in the order of its features. */
export function calloutsOf(
  piece: Piece,
  state: PieceState,
  profiles: { readonly outer: readonly Segment[]; readonly inner: readonly Segment[] },
  words: DrawingWords,
): readonly Callout[] {
  return piece.features.flatMap((feature) => {
    const place = placeOf(feature, profiles);
    return place ? [{ ...place, feature: feature.id, text: textOf(feature, state, words) }] : [];
  });
}

type Where = Pick<Callout, 'side' | 'edges'>;
type Profiles = Parameters<typeof calloutsOf>[2];

function placeOf(feature: Feature, { outer, inner }: Profiles): Where | undefined {
  if (isOutside(feature)) return outside(feature, outer);
  // A leader comes from above and touches the top of the circle.
  if (feature.kind === 'cross-hole')
    return { side: 'over', edges: [{ z: feature.from, r: feature.diameter / 2 }] };
  return inside(feature, feature.kind === 'chamfer' && !feature.internal ? outer : inner);
}

function isOutside(feature: Feature): boolean {
  if (feature.kind === 'thread') return !feature.internal;
  return feature.kind === 'cylinder' || feature.kind === 'groove' || feature.kind === 'taper';
}

/** A diameter is taken from a side where nothing larger stands before it; a groove gets a leader. */
function outside(feature: Feature, outer: readonly Segment[]): Where | undefined {
  const own = outer.filter((segment) => segment.feature === feature.id);
  const [first, last] = [own[0], own.at(-1)];
  if (!first || !last) return undefined;
  if (feature.kind === 'taper') return over(first);
  const before = outer.filter((segment) => segment.to <= first.from + SAME);
  if (lower(before, first.r1)) return pair('right', first.from, first.r1);
  const behind = outer.filter((segment) => segment.from >= last.to - SAME);
  if (lower(behind, last.r2)) return pair('left', last.to, last.r2);
  return over(first);
}

/** A bore is taken from the face it opens to when no narrower part lies between. */
function inside(feature: Feature, profile: readonly Segment[]): Where | undefined {
  const own = profile.filter((segment) => segment.feature === feature.id);
  const widest = own.reduce<Segment | undefined>(
    (best, next) => (best && best.r1 + best.r2 >= next.r1 + next.r2 ? best : next),
    undefined,
  );
  if (!widest) return undefined;
  if (feature.kind !== 'bore') return over(widest);
  const r = feature.diameter / 2;
  const before = profile.filter((segment) => segment.to <= widest.from + SAME);
  if (before.every(({ r1, r2 }) => Math.min(r1, r2) >= r - SAME))
    return { side: 'right', edges: [{ z: widest.from, r }] };
  const behind = profile.filter((segment) => segment.from >= widest.to - SAME);
  if (behind.every(({ r1, r2 }) => Math.min(r1, r2) >= r - SAME))
    return { side: 'left', edges: [{ z: widest.to, r }] };
  return over(widest);
}

function lower(segments: readonly Segment[], r: number): boolean {
  return segments.every(({ r1, r2 }) => Math.max(r1, r2) <= r + SAME);
}

function pair(side: 'left' | 'right', z: number, r: number): Where {
  return {
    side,
    edges: [
      { z, r },
      { z, r: -r },
    ],
  };
}

function over({ from, to, r1, r2 }: Segment): Where {
  return { side: 'over', edges: [{ z: (from + to) / 2, r: (r1 + r2) / 2 }] };
}

function textOf(feature: Feature, state: PieceState, words: DrawingWords): DimensionText {
  const reading = state[feature.id]?.reading;
  const written = calloutText(feature, words);
  const size = stateOf(state, feature.id) === 'now' ? `${words.now}: ${written}` : written;
  const here = reading && (reading.of !== 'length' || !('to' in feature));
  return { size, reading: here ? readingText(reading, words) : undefined };
}
