/** Features that the block of a job has no room for: what would be cut there is air, or the vice. */

import type { Card } from './card.ts';
import type { Numbers } from './numbers.ts';
import { roomTeller, type TellRoom } from './piece-room.ts';
import { type BlockFeature, type FileBlock, isBlock } from './piece-shape.ts';
import type { Flow } from './resolve.ts';
import type { ValueRef } from './words-shape.ts';

/** A thousandth of a micrometre: sizes that are equal may differ in the last digit. */
const nothing = 1e-6;

const acrossOf = {
  ...({ left: 'length', right: 'length', front: 'width', back: 'width' } as const),
  ...({ top: 'height', bottom: 'height' } as const),
};

type Axis = 'length' | 'width' | 'height';
type Sizes = Record<Axis, number>;

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
  return [...faces, ...piece.features.flatMap((feature) => cutFaults(feature, left, sizeOf, tell))];
}

function stockOf(piece: FileBlock, sizeOf: SizeOf): Sizes | undefined {
  const length = sizeOf(piece.stockLength);
  const width = sizeOf(piece.stockWidth);
  const height = sizeOf(piece.stockHeight);
  if (length === undefined || width === undefined || height === undefined) return undefined;
  return { length, width, height };
}

/** What a cut wants of the block against what is there: metal must be left under and beside a slot. */
function cutFaults(
  feature: BlockFeature,
  left: Sizes,
  sizeOf: SizeOf,
  tell: TellRoom,
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
      const across = left[feature.along === 'length' ? 'width' : 'length'];
      const from = feature.from && sizeOf(feature.from);
      const reach = feature.from ? sum(from, sizeOf(feature.width)) : sizeOf(feature.width);
      return [...less(sizeOf(feature.depth), left.height), ...less(reach, across)];
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
        ...within(sizeOf(feature.depth), left.height),
        ...[along, across].flatMap((from) => (from === undefined ? [] : within(half, from))),
        ...within(sum(along, half), left.length),
        ...within(sum(across, half), left.width),
      ];
    }
  }
}
