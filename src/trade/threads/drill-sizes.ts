/** The drills that shops hold, in mm. */

import { MM_PER_INCH } from './designation.ts';

export interface Drill {
  readonly name: string;
  readonly size: number;
}

function stepped(from: number, upTo: number, step: number): readonly number[] {
  const count = Math.round((upTo - from) / step);
  return Array.from({ length: count + 1 }, (_, index) => Number((from + index * step).toFixed(3)));
}

const named = (size: number): Drill => ({ name: `${size}`, size });

/** Tenths up to 14 mm, quarters up to 32, halves up to 100. Source: from memory: ISO 235 preferred sizes. */
export const metricDrills: readonly Drill[] = [
  ...stepped(0.5, 14, 0.1),
  ...stepped(14.25, 32, 0.25),
  ...stepped(32.5, 100, 0.5),
].map(named);

/** Thousandths of an inch times ten, #1 to #60. Source: from memory: ANSI B94.11, number drills. */
const numberSizes = [
  2280, 2210, 2130, 2090, 2055, 2040, 2010, 1990, 1960, 1935, 1910, 1890, 1850, 1820, 1800, 1770,
  1730, 1695, 1660, 1610, 1590, 1570, 1540, 1520, 1495, 1470, 1440, 1405, 1360, 1285, 1200, 1160,
  1130, 1110, 1100, 1065, 1040, 1015, 995, 980, 960, 935, 890, 860, 820, 810, 785, 760, 730, 700,
  670, 635, 595, 550, 520, 465, 430, 420, 410, 400,
];

/** Thousandths of an inch, A to Z. Source: from memory: ANSI B94.11, letter drills. */
const letterSizes = [
  234, 238, 242, 246, 250, 257, 261, 266, 272, 277, 281, 290, 295, 302, 316, 323, 332, 339, 348,
  358, 368, 377, 386, 397, 404, 413,
];
const LETTERS = 'ABCDEFGHIJKLMNOPQRSTUVWXYZ';

function fractionName(sixtyFourths: number): string {
  const low = [64, 32, 16, 8, 4, 2].find((one) => sixtyFourths % one === 0) ?? 1;
  const [top, bottom] = [sixtyFourths / low, 64 / low];
  if (bottom === 1) return `${top} in`;
  const whole = Math.floor(top / bottom);
  return `${whole > 0 ? `${whole} ` : ''}${top % bottom}/${bottom} in`;
}

/** Number, letter and fractional drills, by 1/64 in up to 2 in. */
export const inchDrills: readonly Drill[] = [
  ...numberSizes.map((tens, index) => ({
    name: `#${index + 1}`,
    size: (tens / 10000) * MM_PER_INCH,
  })),
  ...letterSizes.map((thou, index) => ({
    name: LETTERS.charAt(index),
    size: (thou / 1000) * MM_PER_INCH,
  })),
  ...Array.from({ length: 124 }, (_, index) => ({
    name: fractionName(index + 5),
    size: ((index + 5) / 64) * MM_PER_INCH,
  })),
].sort((a, b) => a.size - b.size);

/** The drill nearest to a size in mm; the larger of two that are as near. Undefined for no drills. */
export function nearestDrill(size: number, drills: readonly Drill[]): Drill | undefined {
  return drills.reduce<Drill | undefined>((best, drill) => {
    if (best === undefined) return drill;
    return Math.abs(drill.size - size) <= Math.abs(best.size - size) + 1e-9 ? drill : best;
  }, undefined);
}
