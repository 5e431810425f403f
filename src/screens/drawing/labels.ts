/** Sets the texts of one dimension: the size, and the reading beside it or, where room is short, under it. */
import type { DimensionText } from './dimension-text.ts';
import type { Label, LabelPart, Place } from './marks.ts';
import { textWidth } from './text-width.ts';

/** Room between the size and the reading, and inside the reading's frame, in parts of the text size. */
const APART = 0.55;
const FRAME = 0.3;
const LINE_HEIGHT = 1.3;

export interface LabelStyle {
  readonly textSize: number;
  /** Reading under the size instead of beside it. */
  readonly stacked: boolean;
}

/** The label with its upper left corner at 0,0. */
export function labelOf(text: DimensionText, style: LabelStyle): Label {
  const { textSize, stacked } = style;
  const base = textSize * 1.02;
  const size = part(text.size, 0, base, textSize, false);
  if (text.reading === undefined) return boxed([size], textSize);
  const frame = FRAME * textSize;
  const reading = stacked
    ? part(text.reading, frame, base + LINE_HEIGHT * textSize, textSize, true)
    : part(text.reading, size.width + APART * textSize + frame, base, textSize, true);
  return boxed([size, reading], textSize);
}

/** The label moved so that its upper left corner is at `to`. */
export function moved(label: Label, to: Place): Label {
  const [dx, dy] = [to.x - label.x, to.y - label.y];
  return {
    ...label,
    x: to.x,
    y: to.y,
    parts: label.parts.map((one) => ({ ...one, x: one.x + dx, y: one.y + dy })),
  };
}

/** The frame round a reading. */
export function frameOf(one: LabelPart, textSize: number) {
  const frame = FRAME * textSize;
  return {
    x: one.x - frame,
    y: one.y - textSize * 0.95,
    width: one.width + 2 * frame,
    height: textSize * 1.22,
  };
}

function part(text: string, x: number, y: number, textSize: number, reading: boolean): LabelPart {
  return { text, x, y, width: textWidth(text, textSize, reading), reading };
}

function boxed(parts: readonly LabelPart[], textSize: number): Label {
  const ends = parts.map((one) => one.x + one.width + (one.reading ? FRAME * textSize : 0));
  const lowest = Math.max(...parts.map((one) => one.y));
  return { x: 0, y: 0, width: Math.max(...ends), height: lowest + 0.3 * textSize, parts };
}
