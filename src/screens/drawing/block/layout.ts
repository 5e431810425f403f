/**
 * Works out the drawing of a block: the view from the front, under it the one from above, beside it the one
 * from the left (first angle, from memory: ISO 5456-2), with no label on another.
 */

import type { LayoutOptions } from '../layout.ts';
import type { Drawing } from '../marks.ts';
import type { PieceState } from '../piece.ts';
import type { Block } from './block.ts';
import { type Placed, placedIn } from './flagged.ts';
import { MARGIN } from './frame.ts';
import { levelsOf, type Places, placesOf } from './levels.ts';
import { dimensionsOf } from './measured.ts';
import { planOf, WIDTH } from './plan.ts';
import { drawn } from './views.ts';

const NARROW = 520;

/** The views of a block in one picture. */
export interface BlockLayout extends Drawing {
  readonly at: Places;
}

/** What the views from the front and from the left have of the width at least, and the steps by which it is made so. */
const LEAST = 0.4;
const WIDER = 1.2;
const TRIES = 12;

/**
 * Readings stand beside their sizes; under them where the drawing is narrow or a line would run through a label.
 * Where labels would leave too little for the views, the drawing is wider than was asked for: shown at the
 * width that was meant, all of it is smaller.
 */
export function layOutBlock(
  block: Block,
  state: PieceState,
  options: LayoutOptions = {},
): BlockLayout {
  const { width = WIDTH } = options;
  for (let tries = 1; tries < TRIES; tries++) {
    const wider = { ...options, width: Math.round(width * WIDER ** (tries - 1)) };
    const placed = uncrossed(block, state, wider, width < NARROW);
    if (viewsShare(placed) >= LEAST) return drawnAs(placed);
  }
  return drawnAs(uncrossed(block, state, { ...options, width: width * WIDER ** TRIES }, true));
}

function uncrossed(
  block: Block,
  state: PieceState,
  options: LayoutOptions,
  narrow: boolean,
): Placed {
  const placed = placedIn(planOf(block, state, options, narrow));
  if (narrow || !placed.flags.some(({ crossed }) => crossed)) return placed;
  return placedIn(planOf(block, state, options, true));
}

/** A block that is high rather than long takes little of the width without being crowded. */
function viewsShare({ plan, frame }: Placed): number {
  if (frame.isHighest) return 1;
  const { length, width } = plan.solid.stock;
  return ((length[1] + (plan.hasEnd ? width[1] : 0)) * frame.scale) / plan.width;
}

function drawnAs(placed: Placed): BlockLayout {
  const { plan, frame } = placed;
  const levels = levelsOf(placed);
  const at = placesOf(placed, levels);
  const measured = dimensionsOf(placed, levels, at);
  const marks = [
    drawn(plan.views.front, at.front),
    ...(at.end ? [drawn(plan.views.end, at.end)] : []),
    drawn(plan.views.top, at.top),
  ];
  const lowest = measured.flatMap(({ dimension: { tips, label } }) => [
    ...tips.map(({ y }) => y + 4),
    label.y + label.height,
  ]);
  return {
    at,
    width: plan.width,
    height: Math.max(levels.under, ...lowest) + MARGIN,
    scale: frame.scale,
    textSize: plan.textSize,
    lines: [...measured.flatMap(({ lines }) => lines), ...marks.flatMap(({ lines }) => lines)],
    areas: marks.flatMap(({ areas }) => areas),
    heads: measured.flatMap(({ heads }) => heads),
    dimensions: measured.map(({ dimension }) => dimension),
  };
}
