/** The metal of a block: what is finished of the stock, and the boxes that are cut out of it. Pure, in mm. */

import type { Block, BlockFeature, Face, Hole, Shoulder, Side, Slot } from './block.ts';

export type Axis = 'length' | 'width' | 'height';

/** From the lower to the higher end along an axis. */
export type Stretch = readonly [number, number];
export type Box = Readonly<Record<Axis, Stretch>>;

/** Metal that a feature takes away. */
export interface Cut {
  readonly feature: string;
  readonly box: Box;
}

/** 0, 0, 0 is the lower front left corner of the stock. */
export interface Solid {
  readonly stock: Box;
  readonly finished: Box;
  /** Which feature made a side; nothing for a side of the bare stock. */
  readonly sides: Partial<Readonly<Record<Side, string>>>;
  /** What the faces take off, each from what those before it have left. */
  readonly slabs: readonly Cut[];
  /** Slots and shoulders, within the finished block. */
  readonly cuts: readonly Cut[];
}

/** Axis of a side, and which end of it the side is: 0 the lower one, 1 the higher one. */
export const SIDES: Readonly<Record<Side, readonly [Axis, 0 | 1]>> = {
  left: ['length', 0],
  right: ['length', 1],
  front: ['width', 0],
  back: ['width', 1],
  bottom: ['height', 0],
  top: ['height', 1],
};

export function solidOf(block: Block): Solid {
  const { length, width, height } = block.stock;
  const stock: Box = { length: [0, length], width: [0, width], height: [0, height] };
  const sides: Partial<Record<Side, string>> = {};
  const slabs: Cut[] = [];
  let finished = stock;
  for (const face of block.features) {
    if (face.kind !== 'face') continue;
    const slab = slabOf(face, finished);
    slabs.push({ feature: face.id, box: slab });
    finished = without(finished, face.side, slab);
    sides[face.side] = face.id;
  }
  const cuts = block.features.flatMap((feature) =>
    feature.kind === 'slot' || feature.kind === 'shoulder'
      ? [{ feature: feature.id, box: cutBox(feature, finished) }]
      : [],
  );
  return { stock, finished, sides, slabs, cuts };
}

function slabOf({ side, size }: Face, box: Box): Box {
  const [axis, end] = SIDES[side];
  const [low, high] = box[axis];
  const slab: Stretch =
    end === 0 ? [low, Math.max(high - size, low)] : [Math.min(low + size, high), high];
  return { ...box, [axis]: slab };
}

function without(box: Box, side: Side, slab: Box): Box {
  const [axis, end] = SIDES[side];
  const left: Stretch = end === 0 ? [slab[axis][1], box[axis][1]] : [box[axis][0], slab[axis][0]];
  return { ...box, [axis]: left };
}

/** The axis that the width of a slot or shoulder is measured along. */
export function acrossOf(feature: Slot | Shoulder): 'length' | 'width' {
  if (feature.kind === 'slot') return feature.along === 'length' ? 'width' : 'length';
  return feature.edge === 'left' || feature.edge === 'right' ? 'length' : 'width';
}

function cutBox(feature: Slot | Shoulder, finished: Box): Box {
  const axis = acrossOf(feature);
  const [low, high] = finished[axis];
  const [bottom, top] = finished.height;
  const walls = wallsOf(feature, low, high);
  return {
    ...finished,
    [axis]: [Math.max(walls[0], low), Math.min(walls[1], high)],
    height: [Math.max(top - feature.depth, bottom), top],
  };
}

function wallsOf(feature: Slot | Shoulder, low: number, high: number): Stretch {
  const { width } = feature;
  if (feature.kind === 'slot') {
    const near = low + (feature.from ?? (high - low - width) / 2);
    return [near, near + width];
  }
  const lower = feature.edge === 'front' || feature.edge === 'left';
  return lower ? [low, low + width] : [high - width, high];
}

/** How high the metal stands at a place, holes left out. */
export function surfaceAt({ finished, cuts }: Solid, x: number, y: number): number {
  const over = cuts.filter(({ box }) => within(box.length, x) && within(box.width, y));
  return Math.min(finished.height[1], ...over.map(({ box }) => box.height[0]));
}

function within([low, high]: Stretch, at: number): boolean {
  return at > low && at < high;
}

/** A hole where it stands in the block. */
export interface Bored {
  readonly hole: Hole;
  readonly x: number;
  readonly y: number;
  readonly radius: number;
  /** The surface that it is drilled into. */
  readonly top: number;
  /** Where its full diameter ends. */
  readonly bottom: number;
  /** Where its point ends. */
  readonly tip: number;
}

export function boresOf({ features }: Block, solid: Solid): readonly Bored[] {
  return features.flatMap((hole) => (isHole(hole) ? [boreOf(hole, solid)] : []));
}

function isHole(feature: BlockFeature): feature is Hole {
  return feature.kind === 'hole';
}

function boreOf(hole: Hole, solid: Solid): Bored {
  const { length, width, height } = solid.finished;
  const [x, y] = [length[0] + hole.fromLeft, width[0] + hole.fromFront];
  const radius = hole.diameter / 2;
  const top = surfaceAt(solid, x, y);
  const [low] = height;
  const bottom = hole.depth === undefined ? low : Math.max(top - hole.depth, low);
  const point =
    hole.pointAngle === undefined ? 0 : radius / Math.tan((hole.pointAngle * Math.PI) / 360);
  return { hole, x, y, radius, top, bottom, tip: Math.max(bottom - point, low) };
}
