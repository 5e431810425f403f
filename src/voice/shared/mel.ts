/**
 * The recogniser's own view of sound: 25 mel bands and 13 liftered cosines of their logarithms,
 * computed exactly as the engine does (front end of sphinxbase: fe_sigproc.c; settings of the model's
 * feat.params), so that the model's numbers can be worked with. Pure.
 */
import { transform } from './spectrum.ts';

const RATE = 16_000;
const HOP = 160;
const WINDOW = 410;
const FFT = 512;
export const BANDS = 25;
export const COSINES = 13;
const LOWEST = 130;
const HIGHEST = 6_800;
const LIFTER = 22;
const PRE_EMPHASIS = 0.97;
const FLOOR = 1e-4;

const mel = (hertz: number) => 2595 * Math.log10(1 + hertz / 700);
const hertz = (m: number) => 700 * (10 ** (m / 2595) - 1);

const hamming = Float64Array.from(
  { length: WINDOW },
  (_, i) => 0.54 - 0.46 * Math.cos((2 * Math.PI * i) / (WINDOW - 1)),
);

const STEP = (mel(HIGHEST) - mel(LOWEST)) / (BANDS + 1);

/** Hertz in the middle of a band. */
export function middleOf(band: number): number {
  return hertz(mel(LOWEST) + (band + 1) * STEP);
}

/** The band with this frequency in its middle; between two bands a fraction, outside them below 0 or above the last. */
export function bandAt(frequency: number): number {
  return (mel(frequency) - mel(LOWEST)) / STEP - 1;
}

/** The settings of the engine's front end for bands that stand at `warp` times their frequencies. */
export function frontEndFor(warp: number): string {
  const edges = `-lowerf ${(LOWEST * warp).toFixed(1)}\n-upperf ${(HIGHEST * warp).toFixed(1)}\n`;
  return `${edges}-warp_type inverse_linear\n-warp_params ${warp}\n`;
}

const filterSets = new Map<number, readonly Float64Array[]>();

function filtersFor(warp: number): readonly Float64Array[] {
  const filters = filterSets.get(warp) ?? makeFilters(warp);
  filterSets.set(warp, filters);
  return filters;
}

/** Triangles of unit area with corners on whole bins. */
function makeFilters(warp: number): readonly Float64Array[] {
  const bin = RATE / FFT;
  const corner = (i: number) => Math.floor((warp * middleOf(i - 1)) / bin + 0.5) * bin;
  return Array.from({ length: BANDS }, (_, band) => {
    const [low, middle, high] = [corner(band), corner(band + 1), corner(band + 2)];
    const height = 2 / (high - low);
    return Float64Array.from({ length: FFT / 2 + 1 }, (_unused, i) => {
      const up = (i * bin - low) / (middle - low);
      const down = (high - i * bin) / (high - middle);
      return height * Math.max(0, Math.min(up, down));
    });
  });
}

/** Natural logarithms of the power in each band, frame by frame; the bands stand at `warp` times their frequencies. */
export function bandLogs(samples: Int16Array, warp = 1): readonly Float64Array[] {
  const filters = filtersFor(warp);
  const frames: Float64Array[] = [];
  for (let at = 0; at + WINDOW <= samples.length; at += HOP) {
    frames.push(frameLogs(samples, at, filters));
  }
  return frames;
}

function frameLogs(
  samples: Int16Array,
  at: number,
  filters: readonly Float64Array[],
): Float64Array {
  const re = new Float64Array(FFT);
  const im = new Float64Array(FFT);
  for (let i = 0; i < WINDOW; i++) {
    const before = samples[at + i - 1] ?? 0;
    re[i] = ((samples[at + i] ?? 0) - PRE_EMPHASIS * before) * (hamming[i] ?? 0);
  }
  transform(re, im);
  return Float64Array.from(filters, (weights) => {
    let power = FLOOR;
    for (let bin = 0; bin <= FFT / 2; bin++) {
      const weight = weights[bin] ?? 0;
      if (weight > 0) power += weight * ((re[bin] ?? 0) ** 2 + (im[bin] ?? 0) ** 2);
    }
    return Math.log(power);
  });
}

const lifter = Array.from(
  { length: COSINES },
  (_, i) => 1 + (LIFTER / 2) * Math.sin((i * Math.PI) / LIFTER),
);
const waves = Array.from({ length: COSINES }, (_, i) =>
  Array.from(
    { length: BANDS },
    (_unused, j) =>
      Math.sqrt((i > 0 ? 2 : 1) / BANDS) * Math.cos((Math.PI * i * (j + 0.5)) / BANDS),
  ),
);

/** Band logarithms → liftered cosines. */
export function cosinesOf(logs: ArrayLike<number>): Float64Array {
  return Float64Array.from({ length: COSINES }, (_, i) => {
    const wave = waves[i] ?? [];
    let sum = 0;
    for (let j = 0; j < BANDS; j++) sum += (logs[j] ?? 0) * (wave[j] ?? 0);
    return sum * (lifter[i] ?? 1);
  });
}

/** Liftered cosines → the smooth band logarithms they stand for. */
export function bandsOf(cosines: ArrayLike<number>): Float64Array {
  return Float64Array.from({ length: BANDS }, (_, j) => {
    let sum = 0;
    for (let i = 0; i < COSINES; i++) {
      sum += ((cosines[i] ?? 0) / (lifter[i] ?? 1)) * (waves[i]?.[j] ?? 0);
    }
    return sum;
  });
}

/** Mean of equally long rows; empty when there are none. */
export function meanOf(rows: readonly ArrayLike<number>[]): Float64Array {
  const mean = new Float64Array(rows[0]?.length ?? 0);
  for (const row of rows) {
    for (let i = 0; i < mean.length; i++) mean[i] = (mean[i] ?? 0) + (row[i] ?? 0) / rows.length;
  }
  return mean;
}
