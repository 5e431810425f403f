/** What is written beside a feature: its size, its limits, and what was measured. */
import type { DrawingWords } from './drawing-words.ts';
import type { Feature, Limits, PieceReading } from './piece.ts';

/** The texts of one label: the size as the drawing wants it, and the reading when there is one. */
export interface DimensionText {
  readonly size: string;
  readonly reading?: string | undefined;
}

/** Decimals kept at most; more is no shop size. */
const FINEST = 3;

/** A number of mm with as many decimals as it needs, or as many as asked for. */
export function size(value: number, words: DrawingWords, decimals = needed(value)): string {
  return value.toFixed(decimals).replace('.', words.decimal);
}

/** The size with its limits: ± when they lie evenly about it, else lower–upper (ISO 129-1 gives both ways). */
export function withLimits(nominal: number, limits: Limits, words: DrawingWords): string {
  const { lower, upper } = limits;
  if (lower === undefined || upper === undefined) return size(nominal, words);
  const [down, up] = [nominal - lower, upper - nominal];
  if (Math.abs(down - up) < 1e-9 && up > 0)
    return `${size(nominal, words)} ±${size(round(up), words)}`;
  const decimals = Math.max(needed(lower), needed(upper));
  return `${size(lower, words, decimals)}–${size(upper, words, decimals)}`;
}

/** "24.98 within": the reading with its verdict word. */
export function readingText(reading: PieceReading, words: DrawingWords, decimals = 0): string {
  const value = size(reading.value, words, Math.max(decimals, needed(reading.value)));
  return reading.verdict === undefined ? value : `${value} ${words[reading.verdict]}`;
}

/** What stands at a feature's callout; lengths along the axis are dimensioned below and not repeated here. */
export function calloutText(feature: Feature, words: DrawingWords): string {
  const mm = (value: number) => size(value, words);
  switch (feature.kind) {
    case 'cylinder':
      return `Ø${withLimits(feature.diameter, feature, words)}`;
    case 'bore':
      return `Ø${withLimits(feature.diameter, feature, words)} × ${mm(feature.depth)} ${words.deep}`;
    case 'groove':
      return `Ø${withLimits(feature.diameter, feature, words)} × ${mm(feature.to - feature.from)} ${words.wide}`;
    case 'chamfer':
      return `${mm(feature.size)} × ${mm(feature.angle)}°`;
    case 'taper':
      return `${words.taper} Ø${mm(feature.smallDiameter)} ${words.to} Ø${mm(feature.largeDiameter)}`;
    case 'thread':
      return feature.internal
        ? `${feature.designation} × ${mm(feature.to - feature.from)} ${words.deep}`
        : feature.designation;
    case 'cross-hole':
      return `Ø${withLimits(feature.diameter, feature, words)} ${words.through}`;
    case 'centre-drill':
      return `${words.centre} Ø${mm(feature.diameter)}`;
  }
}

/** Decimals a value needs, up to the finest; 24.9800 needs two. */
export function needed(value: number): number {
  const written = round(value).toFixed(FINEST).replace(/0+$/, '');
  return written.length - written.indexOf('.') - 1;
}

function round(value: number): number {
  return Number(value.toFixed(FINEST));
}
