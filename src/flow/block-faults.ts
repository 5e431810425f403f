/** Features that the block of a job has no room for: what would be cut there is air, or the vice. */

import type { Card } from './card.ts';
import type { Numbers } from './numbers.ts';
import { nothing, roomTeller, type TellRoom } from './piece-room.ts';
import { type BlockFeature, type FileBlock, isBlock } from './piece-shape.ts';
import type { Flow } from './resolve.ts';
import type { ValueRef } from './words-shape.ts';

const acrossOf = {
  ...({ left: 'length', right: 'length', front: 'width', back: 'width' } as const),
  ...({ top: 'height', bottom: 'height' } as const),
};

type Axis = 'length' | 'width' | 'height';
type Sizes = Record<Axis, number>;

type BlockHole = Extract<BlockFeature, { readonly kind: 'hole' }>;

/** A size in mm, nothing while a reading behind it is not taken. */
type SizeOf = (ref: ValueRef | undefined) => number | undefined;

/** One sentence for each feature that the block is too small for; sizes that wait for a reading are not judged. */
export function blockFaults(flow: Flow, card: Card, numbers: Numbers): readonly string[] {
  const { piece } = flow.file;
  if (!piece || !isBlock(piece)) return [];
  const sizeOf: SizeOf = (ref) => ref && numbers.number(ref, {});
  const left = stockOf(piece, sizeOf);
  if (!left) return [];
  const tell = roomTeller(flow.language, card, 'beyondBlock');
  const faces = piece.features.flatMap((feature) => {
    const size = feature.kind === 'face' ? sizeOf(feature.size) : undefined;
    if (feature.kind !== 'face' || size === undefined) return [];
    const axis = acrossOf[feature.side];
    const before = left[axis];
    left[axis] = Math.min(before, size);
    return size > nothing && size <= before + nothing ? [] : [tell(feature.id, size, before)];
  });
  const cutAway = (hole: BlockHole) => depthOver(hole, piece.features, left, sizeOf);
  const cuts = piece.features.flatMap((feature) =>
    cutFaults(feature, left, sizeOf, { tell, cutAway }),
  );
  return [...faces, ...cuts];
}

function stockOf(piece: FileBlock, sizeOf: SizeOf): Sizes | undefined {
  const length = sizeOf(piece.stockLength);
  const width = sizeOf(piece.stockWidth);
  const height = sizeOf(piece.stockHeight);
  if (length === undefined || width === undefined || height === undefined) return undefined;
  return { length, width, height };
}

/** A hole is as deep as it goes in from where its middle stands: the floor of the deepest cut there. */
function depthOver(
  hole: BlockHole,
  features: readonly BlockFeature[],
  left: Sizes,
  sizeOf: SizeOf,
): number {
  const middle = { length: sizeOf(hole.fromLeft), width: sizeOf(hole.fromFront) };
  const depths = features.flatMap((cut) => {
    if (cut.kind !== 'slot' && cut.kind !== 'shoulder') return [];
    const [axis, from, to] = reachOf(cut, left, sizeOf);
    const at = middle[axis];
    if (at === undefined || from === undefined || to === undefined) return [];
    return at > from && at < to ? [sizeOf(cut.depth) ?? 0] : [];
  });
  return Math.max(0, ...depths);
}

type Reach = readonly [axis: 'length' | 'width', from: number | undefined, to: number | undefined];

/** Across which axis a slot or a shoulder reaches, and from where to where, from the left or the front. */
function reachOf(
  cut: Extract<BlockFeature, { readonly kind: 'slot' | 'shoulder' }>,
  left: Sizes,
  sizeOf: SizeOf,
): Reach {
  const width = sizeOf(cut.width);
  const upTo = (from: number | undefined) =>
    from === undefined || width === undefined ? undefined : from + width;
  if (cut.kind === 'slot') {
    const axis = cut.along === 'length' ? 'width' : 'length';
    const middle = width === undefined ? undefined : (left[axis] - width) / 2;
    const from = cut.from ? sizeOf(cut.from) : middle;
    return [axis, from, upTo(from)];
  }
  const axis = acrossOf[cut.edge];
  if (cut.edge === 'left' || cut.edge === 'front') return [axis, 0, width];
  return [axis, width === undefined ? undefined : left[axis] - width, left[axis]];
}

/** What a cut wants of the block against what is there: metal must be left under and beside a slot. */
function cutFaults(
  feature: BlockFeature,
  left: Sizes,
  sizeOf: SizeOf,
  { tell, cutAway }: { readonly tell: TellRoom; cutAway(hole: BlockHole): number },
): readonly string[] {
  const less = (wanted: number | undefined, there: number) =>
    wanted === undefined || wanted < there - nothing ? [] : [tell(feature.id, wanted, there)];
  const within = (wanted: number | undefined, there: number) => less(wanted, there + 2 * nothing);
  const sum = (...refs: readonly (number | undefined)[]) =>
    refs.reduce((all, one) => (all === undefined || one === undefined ? undefined : all + one), 0);
  switch (feature.kind) {
    case 'face':
      return [];
    case 'slot': {
      const [axis, from, to] = reachOf(feature, left, sizeOf);
      const deep = less(sizeOf(feature.depth), left.height);
      // In the middle it begins before the front just when it is too wide: told by its width alone.
      if (!feature.from) return [...deep, ...less(sizeOf(feature.width), left[axis])];
      const before = from !== undefined && from < -nothing ? [tell(feature.id, from, 0)] : [];
      return [...before, ...deep, ...less(to, left[axis])];
    }
    case 'shoulder': {
      const across = left[acrossOf[feature.edge]];
      return [...less(sizeOf(feature.depth), left.height), ...less(sizeOf(feature.width), across)];
    }
    case 'hole': {
      const diameter = sizeOf(feature.diameter);
      const half = diameter === undefined ? undefined : diameter / 2;
      const [along, across] = [sizeOf(feature.fromLeft), sizeOf(feature.fromFront)];
      return [
        ...within(sizeOf(feature.depth), left.height - cutAway(feature)),
        ...[along, across].flatMap((from) => (from === undefined ? [] : within(half, from))),
        ...within(sum(along, half), left.length),
        ...within(sum(across, half), left.width),
      ];
    }
  }
}
