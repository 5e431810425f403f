/** How high each part of a block's drawing stands, and with that the place of every view. */

import { rowFeet } from '../flags.ts';
import type { Placed } from './flagged.ts';
import { MARGIN } from './frame.ts';
import { ROW_STEP } from './spans.ts';
import { overrun, type ToView } from './views.ts';

/** Heights in the picture, from above. */
export interface Levels {
  /** Where the labels of each row over the views stand, the nearest row first. */
  readonly feet: readonly number[];
  /** The first dimension line over the view from the left. */
  readonly over: number;
  /** Upper end of the views from the front and from the left. */
  readonly front: number;
  /** From where the width is put under the view from the left. */
  readonly whole: number;
  /** Upper end of the view from above. */
  readonly top: number;
  /** From where the lengths are put under the view from above. */
  readonly under: number;
}

export function levelsOf({ plan, frame, flags }: Placed): Levels {
  const { textSize, solid, notes, hasEnd } = plan;
  const { scale } = frame;
  // Room for the ends of centre lines, and for a dimension line that goes on beyond its foot.
  const air = Math.max(overrun(solid) * scale + 4, textSize * 0.7);
  const feet = rowFeet(
    flags.map(({ row, wanted }) => ({ row, height: wanted.label.height })),
    MARGIN,
  );
  const above = frame.widths.reduce((sum, { wanted }) => sum + wanted.label.height + ROW_STEP, 0);
  const front = (feet[0] ?? MARGIN) + textSize * 0.5 + above + air;
  const whole = front + solid.stock.height[1] * scale + Math.max(air, textSize);
  const below = plan.wholeWidth.reduce((sum, { label }) => sum + label.height + ROW_STEP, 0);
  const top = whole + below + (hasEnd ? air : textSize);
  const listed = notes.reduce((sum, { label }) => sum + label.height + textSize * 0.5, 0);
  const under = top + Math.max(solid.stock.width[1] * scale, listed) + air;
  return { feet, over: front - air, front, whole, top, under };
}

/** Where a place of each view stands, mm of the stock in, picture units out. */
export type Places = Readonly<Record<'front' | 'top', ToView>> & { readonly end?: ToView };

export function placesOf({ plan, frame }: Placed, { front, top }: Levels): Places {
  const { height, width } = plan.solid.stock;
  const { scale, frontLeft, end } = frame;
  return {
    front: (x, z) => ({ x: frontLeft + x * scale, y: front + (height[1] - z) * scale }),
    top: (x, y) => ({ x: frontLeft + x * scale, y: top + (width[1] - y) * scale }),
    // Seen from the left, the back of the block is at the left.
    ...(end && {
      end: (y: number, z: number) => ({
        x: end.left + (width[1] - y) * scale,
        y: front + (height[1] - z) * scale,
      }),
    }),
  };
}
