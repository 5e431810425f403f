/** Works out a whole drawing: scale, rows, lines and labels, with no label on another. */
import type { Callout } from './callouts.ts';
import { calloutsOf } from './callouts.ts';
import type { Drawn } from './diameter-lines.ts';
import { drawCallout } from './diameter-lines.ts';
import type { DrawingWords } from './drawing-words.ts';
import { ENGLISH_DRAWING } from './drawing-words.ts';
import type { Flag } from './flags.ts';
import { flagRows, rowFeet } from './flags.ts';
import { hatch } from './hatch.ts';
import { labelOf, moved } from './labels.ts';
import { drawLength, fitsBetween, outsideTail } from './length-lines.ts';
import { lengthsOf } from './lengths.ts';
import type { Label, Layout, Line, ToPicture } from './marks.ts';
import type { Piece, PieceState } from './piece.ts';
import { pieceLength } from './piece.ts';
import { innerProfile, largestAt, outerProfile } from './profile.ts';
import { overhangOf, viewOf } from './view.ts';

export interface LayoutOptions {
  /** Width of the drawing in picture units; 720 when not given. Under 520 readings go under sizes. */
  readonly width?: number | undefined;
  /** Height of lettering in picture units; 16 when not given. */
  readonly textSize?: number | undefined;
  readonly words?: DrawingWords | undefined;
}

const WIDTH = 720;
const NARROW = 520;
/** The stock is at most this high, as a part of the drawing's width. */
const HIGHEST = 0.4;
const MARGIN = 8;

interface Plan {
  readonly piece: Piece;
  readonly state: PieceState;
  readonly width: number;
  readonly textSize: number;
  readonly words: DrawingWords;
  readonly callouts: readonly (Callout & { readonly label: Label })[];
  readonly lengths: readonly (ReturnType<typeof lengthsOf>[number] & { readonly label: Label })[];
}

/**
 * The drawing of `piece` as far as `state` says. Sizes in mm in, picture units out. Readings stand beside
 * their sizes; under them where the drawing is narrow or a leader would run through a label.
 */
export function layOut(piece: Piece, state: PieceState, options: LayoutOptions = {}): Layout {
  const plan = planOf(piece, state, options, (options.width ?? WIDTH) < NARROW);
  const placed = placedIn(plan);
  if (!placed.flags.some(({ crossed }) => crossed)) return drawnAs(placed);
  return drawnAs(placedIn(planOf(piece, state, options, true)));
}

interface Placed {
  readonly plan: Plan;
  readonly frame: Frame;
  readonly flags: readonly PlacedFlag[];
}

function placedIn(plan: Plan): Placed {
  const frame = frameOf(plan);
  return { plan, frame, flags: flagsOf(plan, frame) };
}

function drawnAs({ plan, frame, flags }: Placed): Layout {
  const rows = rowFeet(
    flags.map(({ row }, index) => ({ row, height: plan.callouts[index]?.label.height ?? 0 })),
    MARGIN,
  );
  const half = (plan.piece.stock.diameter / 2) * frame.scale;
  const bend = (rows[0] ?? MARGIN) + plan.textSize * 0.5;
  const axis = bend + plan.textSize * 0.6 + half;
  const to: ToPicture = (z, r) => ({ x: frame.right - z * frame.scale, y: axis - r * frame.scale });
  const called = plan.callouts.map((callout, index) => {
    const { left = 0, row = 0, pole = 0 } = flags[index] ?? {};
    const y = (rows[row] ?? MARGIN) - callout.label.height;
    const label = moved(callout.label, { x: left, y });
    return drawCallout(callout, { pole, label, bend, textSize: plan.textSize }, to);
  });
  const measured = lengthsDrawn(plan, to, axis + half);
  return assembled(plan, frame, to, [...called, ...measured], axis);
}

function planOf(piece: Piece, state: PieceState, options: LayoutOptions, stacked: boolean): Plan {
  const { width = WIDTH, textSize = 16, words = ENGLISH_DRAWING } = options;
  const style = { textSize, stacked };
  const profiles = { outer: outerProfile(piece), inner: innerProfile(piece) };
  return {
    piece,
    state,
    width,
    textSize,
    words,
    callouts: inColumns(calloutsOf(piece, state, profiles, words)).map((callout) => ({
      ...callout,
      label: labelOf(callout.text, style),
    })),
    lengths: lengthsOf(piece, state, words).map((wanted) => ({
      ...wanted,
      label: labelOf(wanted.text, style),
    })),
  };
}

/** The smallest diameter stands nearest the piece, so that no extension line crosses a shorter dimension line. */
function inColumns(callouts: readonly Callout[]): readonly Callout[] {
  const radius = ({ edges }: Callout) => edges[0]?.r ?? 0;
  return [...callouts].sort((a, b) => radius(a) - radius(b));
}

interface Frame {
  readonly scale: number;
  /** Where the finished right-hand face lies. */
  readonly right: number;
  /** First column at each side, and the step from one to the next. */
  readonly rightColumn: number;
  readonly leftColumn: number;
  readonly column: number;
}

/** Scale and place of the piece, once the columns at both sides have their room. */
function frameOf(plan: Plan): Frame {
  const { piece, width, textSize } = plan;
  const column = textSize * 1.4;
  const near = textSize * 1.1;
  const count = (side: Callout['side']) => plan.callouts.filter((one) => one.side === side).length;
  const columns = (side: 'left' | 'right') => near + Math.max(count(side) - 1, 0) * column + 6;
  const facing = piece.stock.facing ?? 0;
  const reach = pieceLength(piece) + overhangOf(piece).left + facing;
  const leftPad = MARGIN + columns('left');
  const { rightPad, scale } = roomFor(plan, width - leftPad, reach, MARGIN + columns('right'));
  const spare = width - leftPad - rightPad - reach * scale;
  const right = leftPad + spare / 2 + (reach - facing) * scale;
  return {
    scale,
    right,
    column,
    rightColumn: right + facing * scale + near,
    leftColumn: right - (reach - facing) * scale - near,
  };
}

/**
 * Short lengths need room for their labels to the right of the datum; giving it makes the scale smaller and
 * perhaps one more length short, so it is asked again, at most once for each length.
 */
function roomFor(plan: Plan, width: number, reach: number, least: number) {
  const highest = (HIGHEST * plan.width) / plan.piece.stock.diameter;
  let rightPad = least;
  let scale = Math.min((width - rightPad) / reach, highest);
  for (const _ of plan.lengths) {
    rightPad = Math.max(rightPad, widestOutside(plan, scale));
    scale = Math.min((width - rightPad) / reach, highest);
  }
  return { rightPad, scale };
}

function widestOutside(plan: Plan, scale: number): number {
  const outside = plan.lengths
    .filter(({ label, to }) => !fitsBetween(label, to * scale, plan.textSize))
    .map(({ label, to }) => outsideTail(to * scale, plan.textSize) + label.width);
  return Math.max(0, ...outside) + MARGIN;
}

const FLIES = { right: 'left', left: 'right', over: 'left' } as const;

interface PlacedFlag extends Flag {
  readonly pole: number;
}

function flagsOf(plan: Plan, frame: Frame): readonly PlacedFlag[] {
  const poles = polesOf(plan, frame);
  const wanted = plan.callouts.map(({ label, side }, index) => {
    const pole = poles[index] ?? 0;
    const flies = FLIES[side];
    return { pole: pole - MARGIN, width: label.width, flies };
  });
  return flagRows(wanted, plan.width - 2 * MARGIN).map((flag, index) => ({
    row: flag.row,
    crossed: flag.crossed,
    left: flag.left + MARGIN,
    pole: poles[index] ?? 0,
  }));
}

/** Columns for diameters at the sides; notes stand over their spot, moved apart where two would share it. */
function polesOf(plan: Plan, frame: Frame): readonly number[] {
  const used = { left: 0, right: 0 };
  const columns = plan.callouts.map(({ side }) => {
    if (side === 'right') return frame.rightColumn + used.right++ * frame.column;
    return side === 'left' ? frame.leftColumn - used.left++ * frame.column : undefined;
  });
  const taken = columns.flatMap((column) => column ?? []);
  return plan.callouts.map(({ edges }, index) => {
    const column = columns[index];
    if (column !== undefined) return column;
    const wish = frame.right - (edges[0]?.z ?? 0) * frame.scale;
    const pole = freeNear(wish, taken, plan.textSize);
    taken.push(pole);
    return pole;
  });
}

/** The nearest place to `wish` that keeps `apart` from all that are taken. */
function freeNear(wish: number, taken: readonly number[], apart: number): number {
  for (let step = 0; step <= taken.length; step++)
    for (const place of [wish - step * apart, wish + step * apart])
      if (taken.every((other) => Math.abs(other - place) >= apart - 1e-9)) return place;
  return wish;
}

function lengthsDrawn(plan: Plan, to: ToPicture, below: number): readonly Drawn[] {
  const outer = outerProfile(plan.piece);
  const edge = (z: number) => to(z, -largestAt(outer, z));
  let row = below + plan.textSize * 0.5;
  return plan.lengths.map((wanted) => {
    row += wanted.label.height + 5;
    return drawLength(wanted, {
      label: wanted.label,
      row,
      datum: edge(0),
      edge: edge(wanted.to),
      textSize: plan.textSize,
    });
  });
}

function assembled(
  plan: Plan,
  frame: Frame,
  to: ToPicture,
  drawn: readonly Drawn[],
  axis: number,
): Layout {
  const view = viewOf(plan.piece, plan.state, to);
  const hatching: readonly Line[] = hatch(view.section, plan.textSize * 0.5).map((points) => ({
    pen: 'hatch',
    points,
  }));
  const half = (plan.piece.stock.diameter / 2) * frame.scale;
  const lowest = drawn.flatMap(({ dimension }) => dimension.tips.map(({ y }) => y));
  return {
    width: plan.width,
    height: Math.max(axis + half + plan.textSize, ...lowest) + MARGIN + 6,
    scale: frame.scale,
    textSize: plan.textSize,
    axis,
    lines: [...hatching, ...drawn.flatMap(({ lines }) => lines), ...view.lines],
    areas: view.areas,
    heads: drawn.flatMap(({ heads }) => heads),
    dimensions: drawn.map(({ dimension }) => dimension),
    section: view.section,
  };
}
