/** A second opinion on where the metal of a block is, straight from its numbers, one place at a time. */
import type { Block, BlockFeature } from '../../../../src/screens/drawing/block/block.ts';

export interface Spot {
  readonly length: number;
  readonly width: number;
  readonly height: number;
}

export type Ends = Readonly<Record<keyof Spot, readonly [number, number]>>;

/** The finished block in the stock: each face takes what is over from its own side. */
export function endsOf({ stock, features }: Block): Ends {
  const low = { length: 0, width: 0, height: 0 };
  const high = { ...stock };
  for (const face of features) {
    if (face.kind !== 'face') continue;
    if (face.side === 'left') low.length = high.length - face.size;
    if (face.side === 'right') high.length = low.length + face.size;
    if (face.side === 'front') low.width = high.width - face.size;
    if (face.side === 'back') high.width = low.width + face.size;
    if (face.side === 'bottom') low.height = high.height - face.size;
    if (face.side === 'top') high.height = low.height + face.size;
  }
  return {
    length: [low.length, high.length],
    width: [low.width, high.width],
    height: [low.height, high.height],
  };
}

/** From wall to wall of a slot or shoulder. */
export function wallsOf(feature: BlockFeature, ends: Ends): readonly [number, number] {
  if (feature.kind === 'slot') {
    const [low, high] = ends[feature.along === 'length' ? 'width' : 'length'];
    const near = feature.from === undefined ? (low + high - feature.width) / 2 : low + feature.from;
    return [near, near + feature.width];
  }
  if (feature.kind !== 'shoulder') return [0, 0];
  const { edge, width } = feature;
  const [low, high] = ends[edge === 'left' || edge === 'right' ? 'length' : 'width'];
  return edge === 'left' || edge === 'front' ? [low, low + width] : [high - width, high];
}

/** Holes left out. */
export function isMetal(block: Block, at: Spot): boolean {
  const ends = endsOf(block);
  const within = (value: number, [low, high]: readonly [number, number]) =>
    value > low && value < high;
  if (!within(at.length, ends.length) || !within(at.width, ends.width)) return false;
  if (!within(at.height, ends.height)) return false;
  return block.features.every((feature) => {
    if (feature.kind !== 'slot' && feature.kind !== 'shoulder') return true;
    const isLong =
      feature.kind === 'slot'
        ? feature.along === 'length'
        : feature.edge === 'front' || feature.edge === 'back';
    const inWalls = within(isLong ? at.width : at.length, wallsOf(feature, ends));
    return !(inWalls && at.height > ends.height[1] - feature.depth);
  });
}
