/** Draws the lengths under the piece, one row each, all from the right-hand face. */
import type { Drawn } from './diameter-lines.ts';
import { moved } from './labels.ts';
import type { LengthWanted } from './lengths.ts';
import type { Label, Line, Place } from './marks.ts';
import { headLength } from './marks.ts';

const BEYOND = 4;

export interface LengthPlace {
  readonly label: Label;
  /** Height of the dimension line. */
  readonly row: number;
  /** Where the extension lines begin: the lowest points of the outline at both ends. */
  readonly datum: Place;
  readonly edge: Place;
  readonly textSize: number;
}

/** Whether the label finds room between the arrow heads. */
export function fitsBetween(label: Label, span: number, textSize: number): boolean {
  return label.width + 2 * headLength(textSize) + textSize * 0.6 <= span;
}

/** Where the label goes: over the middle of its line, or to the right of the datum when the length is short. */
export function lengthLabel(place: LengthPlace): Label {
  const { label, row, datum, edge, textSize } = place;
  const span = datum.x - edge.x;
  const x = fitsBetween(label, span, textSize)
    ? edge.x + (span - label.width) / 2
    : datum.x + outsideTail(span, textSize);
  return moved(label, { x, y: row - label.height - 1 });
}

/** How far right of the datum a label begins when it stands outside. */
export function outsideTail(span: number, textSize: number): number {
  return span < 3 * headLength(textSize) ? textSize * 1.5 : textSize * 0.6;
}

/** The length with its extension lines, heads and label. */
export function drawLength(wanted: LengthWanted, place: LengthPlace): Drawn {
  const { row, datum, edge, textSize } = place;
  const label = lengthLabel(place);
  const span = datum.x - edge.x;
  const outside = span < 3 * headLength(textSize);
  const tail = outside ? textSize : 0;
  const end = fitsBetween(label, span, textSize) ? datum.x + tail : label.x + label.width;
  const line = (points: readonly Place[]): Line => ({
    pen: 'thin',
    points,
    feature: wanted.feature,
  });
  const tips = [
    { x: edge.x, y: row },
    { x: datum.x, y: row },
  ];
  return {
    lines: [
      line([edge, { x: edge.x, y: row + BEYOND }]),
      line([datum, { x: datum.x, y: row + BEYOND }]),
      line([
        { x: edge.x - tail, y: row },
        { x: end, y: row },
      ]),
    ],
    heads: tips.map((tip, index) => ({ tip, turned: (index === 0) !== outside ? 180 : 0 })),
    dimension: { feature: wanted.feature, kind: 'length', edges: [edge, datum], tips, label },
  };
}
