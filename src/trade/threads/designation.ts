/** Reads a thread as it is written on a drawing: M10x1.5, M10, 1/4-20 UNC, #10-24, 3/8-16 UNC-2A. */

import { type Worded, worded } from '../../texts/index.ts';
import { show } from '../show.ts';
import { metricPitches, unifiedPitches } from './standard-threads.ts';

export const MM_PER_INCH = 25.4;

/** A 60° thread. Lengths in mm. */
export interface Thread {
  readonly system: 'metric' | 'unified';
  /** As it is best written: "M10x1.5", "1/4-20 UNC". */
  readonly name: string;
  readonly major: number;
  readonly pitch: number;
  readonly series: 'coarse' | 'fine' | 'special';
}

type Read = Thread | { readonly fault: Worded };

const METRIC = /^M\s*([\d.]+)(?:\s*[x×*]\s*([\d.]+))?(?:\s*-?\s*\d\s*[gh])*$/i;
const UNIFIED =
  /^(#?\d*\.?\d+(?:[ -]\d+\/\d+|\/\d+)?)(?:\s*-\s*([\d.]+))?\s*(UNC|UNF|UNS|UN)?(?:\s*-?\s*[123][AB])?$/i;
const EXAMPLES = 'write it as M10, M10x1.25, 1/4-20 UNC or #10-24';

function seriesOf(pitch: number, coarse: number, fine: readonly number[]): Thread['series'] {
  if (coarse > 0 && pitch === coarse) return 'coarse';
  return fine.includes(pitch) ? 'fine' : 'special';
}

function metric(diameter: number, given: number | undefined): Read {
  const [, coarse = 0, fine = []] = metricPitches.find(([size]) => size === diameter) ?? [];
  const pitch = given ?? coarse;
  if (pitch === 0) {
    const choice =
      fine.length > 0 ? worded` It has ${fine.map((one) => show(one)).join(', ')}.` : '';
    return { fault: worded`M${show(diameter)} has no coarse pitch; say which one it is.${choice}` };
  }
  if (diameter < 1 || diameter > 300 || pitch < 0.2 || pitch > 8 || pitch > diameter / 3) {
    return {
      fault: worded`A thread M${show(diameter)}x${show(pitch)} is not possible; ${EXAMPLES}.`,
    };
  }
  const name = `M${show(diameter)}x${show(pitch)}`;
  const series = seriesOf(pitch, coarse, fine);
  return { system: 'metric', name, major: diameter, pitch, series };
}

/** Inches of "#10", "1/4", "1 1/2", "1-1/2", ".5"; numbers 0 to 12 are 0.060 + 0.013 a number. */
function inches(size: string): number {
  if (size.startsWith('#')) return (60 + 13 * Number(size.slice(1))) / 1000;
  return size
    .split(/[ -]/)
    .map((piece) => piece.split('/').map(Number))
    .reduce((sum, [top = Number.NaN, bottom = 1]) => sum + top / bottom, 0);
}

/** "10-24" means the number size 10 when a number size has that pitch and the inch size has not. */
function sizeName(written: string, tpi: number): string {
  const numbered = unifiedPitches.find(
    ([name, coarse, fine]) => name === `#${written}` && (tpi === coarse || tpi === fine),
  );
  return numbered === undefined ? written.replace('-', ' ') : numbered[0];
}

function tpiOf(coarse: number, fine: number, given: number | undefined, series: string): number {
  if (given !== undefined) return given;
  return series === 'UNF' ? fine : series === 'UNC' ? coarse : 0;
}

function unified(written: string, given: number | undefined, series: string): Read {
  const size = sizeName(written, given ?? 0);
  const diameter = inches(size);
  const row = unifiedPitches.find(([name]) => inches(name) === diameter);
  const [name, coarse, fine] = row ?? [size, 0, 0];
  const tpi = tpiOf(coarse, fine, given, series);
  if (tpi === 0) {
    return {
      fault: worded`"${written} ${series}" does not say how many threads an inch; ${EXAMPLES}.`,
    };
  }
  const named = series === 'UNC' ? coarse : series === 'UNF' ? fine : tpi;
  if (named !== tpi) {
    return {
      fault: worded`${name} ${series} has ${named === 0 ? 'no such series' : worded`${show(named)} threads an inch, not ${show(tpi)}`}.`,
    };
  }
  if (!(diameter >= 0.06 && diameter <= 6) || tpi < 2 || tpi > 80 || 1 / tpi > diameter / 3) {
    return { fault: worded`A thread ${name}-${show(tpi)} is not possible; ${EXAMPLES}.` };
  }
  const kind = seriesOf(tpi, coarse, [fine]);
  const tail = { coarse: 'UNC', fine: 'UNF', special: 'UNS' }[kind];
  return {
    system: 'unified',
    name: `${name}-${show(tpi)} ${tail}`,
    major: diameter * MM_PER_INCH,
    pitch: MM_PER_INCH / tpi,
    series: kind,
  };
}

const numberIn = (digits: string | undefined) =>
  digits === undefined ? undefined : Number(digits);

/** The thread, or why the words do not make one. A tolerance class behind it is read over; "M10x1,5" is M10x1.5. */
export function parseThread(text: string): Read {
  const written = text.trim().replace(/(?<=\d),(?=\d)/g, '.');
  const asMetric = METRIC.exec(written);
  if (asMetric) return metric(Number(asMetric[1]), numberIn(asMetric[2]));
  const asUnified = UNIFIED.exec(written);
  if (!asUnified) return { fault: worded`"${written}" is no thread known here; ${EXAMPLES}.` };
  const [, size = '', tpi, series = ''] = asUnified;
  return unified(size, numberIn(tpi), series.toUpperCase());
}
