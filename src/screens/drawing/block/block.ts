/** A milled block as plain data: stock and features. Lengths in mm, measured on the finished block. */

import type { Limits } from '../piece.ts';

export type Side = 'top' | 'bottom' | 'left' | 'right' | 'front' | 'back';

interface Named {
  readonly id: string;
}

/** A side milled; the block then has `size` across it. Limits are those of the size. */
export interface Face extends Named, Limits {
  readonly kind: 'face';
  readonly side: Side;
  readonly size: number;
}

/** Limits are those of the depth; the width has its own. */
interface Groove extends Named, Limits {
  readonly width: number;
  readonly depth: number;
  readonly widthLimits?: Limits | undefined;
}

/** Cut from above, right through from one side to the other. */
export interface Slot extends Groove {
  readonly kind: 'slot';
  readonly along: 'length' | 'width';
  /** Of its nearer wall from the front, or from the left; in the middle when not given. */
  readonly from?: number | undefined;
}

/** Cut from above along one edge. */
export interface Shoulder extends Groove {
  readonly kind: 'shoulder';
  readonly edge: 'front' | 'back' | 'left' | 'right';
}

/** Drilled from above. Limits are those of the diameter. */
export interface Hole extends Named, Limits {
  readonly kind: 'hole';
  readonly fromLeft: number;
  readonly fromFront: number;
  readonly diameter: number;
  /** To the full diameter, from the surface it is drilled into; right through when not given. */
  readonly depth?: number | undefined;
  /** Included angle of the drilled end in degrees; without it the hole ends flat. */
  readonly pointAngle?: number | undefined;
}

export type BlockFeature = Face | Slot | Shoulder | Hole;

/** Length from left to right, width from front to back, height upwards. */
export interface Block {
  readonly stock: { readonly length: number; readonly width: number; readonly height: number };
  readonly features: readonly BlockFeature[];
}
