/** The scale of a block's drawing, and where its views stand from left to right. */

import type { Label } from '../marks.ts';
import type { Labelled, Plan } from './plan.ts';
import { type EndsOf, type Row, roomAt, rowsOf } from './rows.ts';
import { overrun } from './views.ts';

export const MARGIN = 8;
/** The views are together at most this high, as a part of the drawing's width. */
const HIGHEST = 0.45;
/** A label shorter than this may stand beside the view at its nearer side, in parts of the text size. */
const SHORT = 4;

/** Dimension lines under the views, row by row. */
interface Rows {
  readonly lengths: readonly Row[];
  readonly widths: readonly Row[];
  /** Under the view from the left, where there is one. */
  readonly wholeWidth: readonly Row[];
}

export interface Frame extends Rows {
  readonly scale: number;
  /** Its height alone keeps the block from being drawn larger. */
  readonly isHighest: boolean;
  readonly frontLeft: number;
  readonly frontRight: number;
  /** Nothing where two views tell all. */
  readonly end: { readonly left: number; readonly right: number } | undefined;
  /** First dimension line at each side, and the step from one to the next. */
  readonly leftColumn: number;
  readonly rightColumn: number;
  readonly column: number;
  readonly noteLeft: number;
}

/** A label outside takes room, which makes the scale smaller and perhaps another label go outside: asked again. */
export function frameOf(plan: Plan): Frame {
  const { stock } = plan.solid;
  const highest = (HIGHEST * plan.width) / (stock.height[1] + stock.width[1]);
  let scale = highest;
  for (const _ of [...plan.lengths, ...plan.widths, ...plan.wholeWidth]) {
    scale = Math.min(scale, scaleWith(plan, roomsAt(plan, scale)));
  }
  return { ...standing(plan, scale, roomsAt(plan, scale)), isHighest: scale === highest };
}

interface Rooms extends Rows {
  /** Left of the front view, whatever the scale. */
  readonly pad: number;
  /** Left of the view from the left, part of it over the front view. */
  readonly beforeEnd: number;
  /** Between the two. */
  readonly gap: number;
  /** Between the last view and the dimension lines at its right. */
  readonly alley: number;
  readonly columns: number;
  /** Right of the view from above. */
  readonly beside: number;
}

function roomsAt(plan: Plan, scale: number): Rooms {
  const { textSize, solid } = plan;
  const { stock } = solid;
  const [length, width] = [stock.length[1] * scale, stock.width[1] * scale];
  const isShort = (label: Label) => label.width < SHORT * textSize;
  const lengths = rowsOf(
    plan.lengths,
    ({ span }) => [span[0] * scale, span[1] * scale],
    (label, [a, b]) => (isShort(label) && a + b < length ? 'left' : 'right'),
    textSize,
  );
  // Seen from the left, the back of the block is at the left.
  const fromBack: EndsOf = ({ span }) => [width - span[1] * scale, width - span[0] * scale];
  const widths = rowsOf(
    plan.widths,
    fromBack,
    (label, [a, b]) => (isShort(label) && a + b > width + 1 ? 'right' : 'left'),
    textSize,
  );
  const whole = rowsOf(plan.wholeWidth, fromBack, () => 'left', textSize);
  const near = nearColumn(textSize);
  const notes = plan.notes.map(({ label }) => 2 * textSize + label.width);
  const wholeBeside = plan.wholeWidth.map(({ label }) => near + label.width + textSize);
  return {
    lengths,
    widths,
    wholeWidth: plan.hasEnd ? whole : [],
    pad:
      MARGIN +
      Math.max(overrun(solid) * scale, columnsWidth(plan.left, textSize), roomAt(lengths, 'left')),
    beforeEnd: plan.hasEnd ? roomAt([...widths, ...whole], 'left') : 0,
    gap: plan.hasEnd ? 1.8 * textSize : 0,
    alley: roomAt(widths, 'right'),
    columns: columnsWidth(plan.right, textSize),
    beside: Math.max(roomAt(lengths, 'right'), ...(plan.hasEnd ? notes : wholeBeside)) + MARGIN,
  };
}

function nearColumn(textSize: number): number {
  return textSize * 1.1;
}

function columnsWidth({ length }: readonly Labelled[], textSize: number): number {
  return length === 0 ? 0 : nearColumn(textSize) + (length - 1) * 1.4 * textSize + 6;
}

/** The largest scale at which everything finds its room from left to right. */
function scaleWith(plan: Plan, rooms: Rooms): number {
  const { stock } = plan.solid;
  const [length, width] = [stock.length[1], plan.hasEnd ? stock.width[1] : 0];
  const { pad, beforeEnd, gap, alley, columns, beside } = rooms;
  const rest = plan.width - pad - alley - columns - MARGIN;
  return Math.min(
    (rest - gap) / (length + width),
    width > 0 ? (rest - beforeEnd) / width : Number.POSITIVE_INFINITY,
    (plan.width - pad - beside) / length,
  );
}

function standing(plan: Plan, scale: number, rooms: Rooms): Omit<Frame, 'isHighest'> {
  const { stock } = plan.solid;
  const { pad, beforeEnd, gap, alley, columns, beside, lengths, widths, wholeWidth } = rooms;
  const [length, width] = [stock.length[1] * scale, plan.hasEnd ? stock.width[1] * scale : 0];
  // Labels before the view from the left stand over the front view, as far as that is long.
  const apart = Math.max(gap, beforeEnd - length);
  const used = pad + length + Math.max(apart + width + alley + columns + MARGIN, beside);
  const frontLeft = pad + Math.max((plan.width - used) / 2, 0);
  const frontRight = frontLeft + length;
  const end = plan.hasEnd
    ? { left: frontRight + apart, right: frontRight + apart + width }
    : undefined;
  const near = nearColumn(plan.textSize);
  return {
    scale,
    frontLeft,
    frontRight,
    end,
    leftColumn: frontLeft - near,
    rightColumn: (end?.right ?? frontRight) + alley + near,
    column: 1.4 * plan.textSize,
    noteLeft: frontRight + 2 * plan.textSize,
    lengths,
    widths,
    wholeWidth,
  };
}
