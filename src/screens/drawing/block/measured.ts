/** Draws the dimensions of a block's views where frame and levels have put them. */

import type { Callout } from '../callouts.ts';
import { type Drawn, drawCallout } from '../diameter-lines.ts';
import { moved } from '../labels.ts';
import type { Label, Place } from '../marks.ts';
import type { Placed } from './flagged.ts';
import type { Levels, Places } from './levels.ts';
import type { Labelled, Note } from './plan.ts';
import type { Row } from './rows.ts';
import { drawSpan, ROW_STEP } from './spans.ts';
import type { ToView } from './views.ts';

/** All dimensions: those that lie, those that stand, and the notes of holes. */
export function dimensionsOf(placed: Placed, levels: Levels, at: Places): readonly Drawn[] {
  const { plan, frame, flags } = placed;
  const { textSize } = plan;
  const front = { to: at.top, view: { left: frame.frontLeft, right: frame.frontRight } };
  const end = at.end && frame.end ? { to: at.end, view: frame.end } : undefined;
  const lying = [
    ...rowsDrawn(frame.lengths, { ...front, textSize, from: levels.under, way: 1 }),
    ...(end ? rowsDrawn(frame.widths, { ...end, textSize, from: levels.over, way: -1 }) : []),
    ...(end ? rowsDrawn(frame.wholeWidth, { ...end, textSize, from: levels.whole, way: 1 }) : []),
  ];
  const heights = flags.map((flag) => {
    const { wanted, pole, side, left, row } = flag;
    const y = (levels.feet[row] ?? 0) - wanted.label.height;
    const to = side === 'right' ? (at.end ?? at.front) : at.front;
    return standing(wanted, {
      side,
      pole,
      label: moved(wanted.label, { x: left, y }),
      to,
      textSize,
    });
  });
  const beside = at.end ? [] : plan.wholeWidth.map((wanted) => widthBeside(wanted, placed, at));
  return [...lying, ...heights, ...beside, ...notesDrawn(placed, levels, at.top)];
}

interface RowsPlace {
  readonly to: ToView;
  readonly view: { readonly left: number; readonly right: number };
  /** Where the room of the rows begins, and which way they go on from there. */
  readonly from: number;
  readonly way: 1 | -1;
  readonly textSize: number;
}

function rowsDrawn(all: readonly Row[], place: RowsPlace): readonly Drawn[] {
  const { to, view, way, textSize } = place;
  let edge = place.from;
  return all.map(({ wanted, labelAt }) => {
    const { feature, label, span, ends } = wanted;
    const step = label.height + ROW_STEP;
    // A label stands over its line: going down the line is at the far end of its step, going up at the near one.
    const row = way === 1 ? edge + step : edge;
    edge += way * step;
    const [one, other] = [to(span[0], ends[0]), to(span[1], ends[1])];
    const edges: readonly [Place, Place] = one.x < other.x ? [one, other] : [other, one];
    return drawSpan({ feature, label, labelAt, edges, row, view, textSize });
  });
}

interface StandingPlace {
  readonly side: 'left' | 'right';
  readonly pole: number;
  readonly label: Label;
  readonly to: ToView;
  readonly textSize: number;
}

/** A distance that stands: its line goes up to the label, as that of a diameter does. */
function standing(wanted: Labelled, { side, pole, label, to, textSize }: StandingPlace): Drawn {
  const { feature, span, ends, text } = wanted;
  const edges = [
    { z: ends[1], r: span[1] },
    { z: ends[0], r: span[0] },
  ];
  const callout: Callout = { feature, side, edges, text };
  const drawn = drawCallout(callout, { pole, label, bend: 0, textSize }, to);
  return { ...drawn, dimension: { ...drawn.dimension, kind: 'length' } };
}

/** With two views only, the width stands beside the one from above. */
function widthBeside(wanted: Labelled, placed: Placed, at: Places): Drawn {
  const { textSize } = placed.plan;
  const pole = placed.frame.frontRight + textSize * 1.1;
  const tip = at.top(0, wanted.span[1]).y;
  const label = moved(wanted.label, { x: pole, y: tip - textSize * 0.6 - wanted.label.height });
  return standing(wanted, { side: 'right', pole, label, to: at.top, textSize });
}

/** Notes stand in a list beside the view from above, the farthest hole first, each with a leader to its edge. */
function notesDrawn({ plan, frame }: Placed, levels: Levels, to: ToView): readonly Drawn[] {
  const { textSize, notes } = plan;
  let y = levels.top;
  return [...notes]
    .sort((a, b) => b.bore.y - a.bore.y)
    .map((note) => {
      const label = moved(note.label, { x: frame.noteLeft, y });
      y += label.height + textSize * 0.5;
      return noteDrawn(note, label, frame.scale, to);
    });
}

/** The leader points to the middle of the hole and ends at its edge. */
function noteDrawn({ bore }: Note, label: Label, scale: number, to: ToView): Drawn {
  const feature = bore.hole.id;
  const shelf = label.y + label.height;
  const middle = to(bore.x, bore.y);
  const start = { x: label.x, y: shelf };
  const turned = Math.atan2(middle.y - start.y, middle.x - start.x);
  const radius = bore.radius * scale;
  const tip = {
    x: middle.x - radius * Math.cos(turned),
    y: middle.y - radius * Math.sin(turned),
  };
  return {
    lines: [{ pen: 'thin', points: [tip, start, { x: label.x + label.width, y: shelf }], feature }],
    heads: [{ tip, turned: (turned * 180) / Math.PI }],
    dimension: { feature, kind: 'note', edges: [tip], tips: [tip], label },
  };
}
