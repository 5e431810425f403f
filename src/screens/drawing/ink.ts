/** Turns a worked-out drawing into plain SVG elements: one list, drawn on the page and written to a file. */
import { frameOf } from './labels.ts';
import type { Area, Dimension, Drawing, Head, LabelPart, Line, Pen, Place } from './marks.ts';
import { headLength } from './marks.ts';

/** One SVG element with its attributes, and its text or the elements in it when it has any. */
export interface Ink {
  readonly tag: 'path' | 'rect' | 'text' | 'g';
  readonly attributes: Readonly<Record<string, string | number>>;
  readonly text?: string;
  readonly inside?: readonly Ink[];
}

/** Colours come from the page; in a file of its own the drawing is black on white. */
const LINE = 'var(--line, #111)';
const LIT = 'var(--lit, #d5c6f0)';
const GROUND = 'var(--ground, #fff)';

/** Thin lines in parts of the text size; firm ones are twice as broad (ISO 128-2, ratio 2:1). */
const THIN = 0.075;

const BREADTH: Readonly<Record<Pen, number>> = {
  firm: 2,
  now: 3.2,
  planned: 1,
  thin: 1,
  hatch: 0.8,
  centre: 1,
  stock: 1,
  hidden: 1,
  'now-hidden': 3.2,
};

/**
 * Dash lengths in thin line breadths (from memory: ISO 128-2; lines 04 and 05: long dash 24, gap 3, dot 0.5;
 * line 02: dash 12, gap 3).
 */
const DASHES: Partial<Readonly<Record<Pen, readonly number[]>>> = {
  centre: [24, 3, 0.5, 3],
  stock: [24, 3, 0.5, 3, 0.5, 3],
  hidden: [12, 3],
  'now-hidden': [12, 6],
};

/** All elements from back to front. */
export function inkOf(layout: Drawing): readonly Ink[] {
  const breadth = layout.textSize * THIN;
  return [
    ...layout.areas.map(area),
    ...layout.lines.map((line) => lineInk(line, breadth)),
    ...layout.heads.map((head) => arrow(head, layout.textSize)),
    ...layout.dimensions.flatMap((dimension) => lettering(dimension, layout.textSize)),
  ];
}

function area({ points, feature }: Area): Ink {
  return {
    tag: 'path',
    attributes: { class: 'cut-now', 'data-feature': feature, d: `${path(points)} Z`, fill: LIT },
  };
}

/** A line of its kind; `breadth` is that of a thin one. */
export function lineInk({ pen, points, feature }: Line, breadth: number): Ink {
  const dashes = DASHES[pen]?.map((part) => round(part * breadth));
  return {
    tag: 'path',
    attributes: {
      class: `line-${pen}`,
      ...(feature === undefined ? {} : { 'data-feature': feature }),
      d: path(points),
      fill: 'none',
      stroke: LINE,
      'stroke-width': round(BREADTH[pen] * breadth),
      'stroke-linejoin': 'round',
      'stroke-linecap': dashes ? 'butt' : 'round',
      ...(dashes ? { 'stroke-dasharray': dashes.join(' ') } : {}),
    },
  };
}

/** A closed filled head, broad enough to be seen at arm's length. */
function arrow({ tip, turned }: Head, textSize: number): Ink {
  const long = headLength(textSize);
  const broad = long * 0.4;
  return {
    tag: 'path',
    attributes: {
      class: 'arrow-head',
      d: `M0 0 L${round(-long)} ${round(broad / 2)} V${round(-broad / 2)} Z`,
      transform: `translate(${round(tip.x)} ${round(tip.y)}) rotate(${round(turned)})`,
      fill: LINE,
    },
  };
}

function lettering({ label, feature }: Dimension, textSize: number): readonly Ink[] {
  return label.parts.flatMap((part) => [
    ...(part.reading ? [readingFrame(part, textSize, feature)] : []),
    letters(part, textSize, feature),
  ]);
}

function readingFrame(part: LabelPart, textSize: number, feature: string): Ink {
  const { x, y, width, height } = frameOf(part, textSize);
  return {
    tag: 'rect',
    attributes: {
      class: 'reading-frame',
      'data-feature': feature,
      x: round(x),
      y: round(y),
      width: round(width),
      height: round(height),
      rx: round(textSize * 0.2),
      fill: GROUND,
      stroke: LINE,
      'stroke-width': round(textSize * THIN * 1.4),
    },
  };
}

/** A rim in the ground's colour keeps letters clear of any line behind them. */
function letters(part: LabelPart, textSize: number, feature: string): Ink {
  return {
    tag: 'text',
    attributes: {
      class: part.reading ? 'reading' : 'size',
      'data-feature': feature,
      x: round(part.x),
      y: round(part.y),
      'font-size': textSize,
      ...(part.reading ? { 'font-weight': 700 } : {}),
      fill: LINE,
      stroke: GROUND,
      'stroke-width': round(textSize * 0.22),
      'stroke-linejoin': 'round',
      'paint-order': 'stroke',
    },
    text: part.text,
  };
}

function path(points: readonly Place[]): string {
  return points.map(({ x, y }, index) => `${index ? 'L' : 'M'}${round(x)} ${round(y)}`).join(' ');
}

function round(value: number): number {
  return Math.round(value * 100) / 100;
}
