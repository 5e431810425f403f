/** Draws a distance across a view: extension lines from its edges, the line between its heads, its label. */

import type { Drawn } from '../diameter-lines.ts';
import { moved } from '../labels.ts';
import { fitsBetween, outsideTail } from '../length-lines.ts';
import type { Label, Line, Place } from '../marks.ts';
import { headLength } from '../marks.ts';

/** Between the heads, or beyond the view at one side. */
export type LabelAt = 'between' | 'left' | 'right';

export interface SpanPlace {
  readonly feature: string;
  readonly label: Label;
  readonly labelAt: LabelAt;
  /** The edges that are measured, the left one first. */
  readonly edges: readonly [Place, Place];
  /** Height of the dimension line. */
  readonly row: number;
  /** Where the view ends: a label that does not fit between stands beyond. */
  readonly view: { readonly left: number; readonly right: number };
  readonly textSize: number;
}

const BEYOND = 4;
/** Between a row and the label over it, and from there to the next row. */
const OVER = 1;
export const ROW_STEP = 5;

/** Room that a label takes beyond the view, with the end of the line under it. */
export function roomOutside(label: Label, span: number, textSize: number): number {
  return outsideTail(span, textSize) + label.width;
}

/** Whether a label stands between the heads, with no extension line of another dimension through it. */
export function standsBetween(
  label: Label,
  [left, right]: readonly [number, number],
  strangers: readonly number[],
  textSize: number,
): boolean {
  const middle = (left + right) / 2;
  const reach = label.width / 2 + 2;
  return (
    fitsBetween(label, right - left, textSize) &&
    strangers.every((at) => Math.abs(at - middle) > reach)
  );
}

export function drawSpan(place: SpanPlace): Drawn {
  const { feature, row, textSize, edges, labelAt, view } = place;
  const [left, right] = edges;
  const span = right.x - left.x;
  const turnedIn = span < 3 * headLength(textSize);
  const tail = turnedIn ? textSize : 0;
  const label = moved(place.label, { x: labelLeft(place), y: row - place.label.height - OVER });
  const ends = [left.x - tail, right.x + tail];
  if (labelAt === 'left') ends.push(Math.min(label.x, view.left));
  if (labelAt === 'right') ends.push(Math.max(label.x + label.width, view.right));
  const line = (points: readonly Place[]): Line => ({ pen: 'thin', points, feature });
  const tips = edges.map(({ x }) => ({ x, y: row }));
  return {
    lines: [
      ...edges.map((edge) =>
        line([edge, { x: edge.x, y: row + (row < edge.y ? -BEYOND : BEYOND) }]),
      ),
      line([
        { x: Math.min(...ends), y: row },
        { x: Math.max(...ends), y: row },
      ]),
    ],
    heads: tips.map((tip, index) => ({ tip, turned: (index === 0) !== turnedIn ? 180 : 0 })),
    dimension: { feature, kind: 'length', edges, tips, label },
  };
}

function labelLeft({ label, labelAt, edges, view, textSize }: SpanPlace): number {
  const [left, right] = edges;
  const away = outsideTail(right.x - left.x, textSize);
  if (labelAt === 'left') return view.left - away - label.width;
  if (labelAt === 'right') return view.right + away;
  return (left.x + right.x - label.width) / 2;
}
