/** Whether readings drift, and what to do to the tool. */

import { worded } from '../../texts/index.ts';
import { aChoice, aCount, aNumber } from '../inputs.ts';
import { lengthPart, part } from '../part.ts';
import type { Rule, RuleValues, Worked } from '../rule.ts';
import { show } from '../show.ts';
import { fault, listOf, numberOf, wordOf } from '../values.ts';
import { meanOf, readingsInput } from './spread.ts';

/** How many of the last readings rise (or fall) one after the other; 1 when the last two are equal. */
export function runAtEnd(readings: readonly number[], direction: 1 | -1): number {
  let length = 1;
  for (let index = readings.length - 1; index > 0; index -= 1) {
    const step = ((readings[index] ?? 0) - (readings[index - 1] ?? 0)) * direction;
    if (step <= 0) break;
    length += 1;
  }
  return length;
}

function trendWord(up: number, down: number, wanted: number): string {
  if (up >= wanted) return 'rising';
  return down >= wanted ? 'falling' : 'steady';
}

function workTrend(values: RuleValues): Worked {
  const [readings, wanted] = [listOf(values, 'readings'), numberOf(values, 'run')];
  const [up, down] = [runAtEnd(readings, 1), runAtEnd(readings, -1)];
  const word = trendWord(up, down, wanted);
  const longest = Math.max(up, down);
  const way = up >= down ? 'rise' : 'fall';
  return {
    ok: true,
    value: longest,
    word,
    working: worded`the last ${longest} of ${readings.length} readings ${way} one after the other; ${wanted} are a trend: ${word}`,
    parts: {
      rising: part(up, 'count', 'rising at the end'),
      falling: part(down, 'count', 'falling'),
    },
  };
}

export const trend: Rule = {
  name: 'trend',
  title: 'Readings that drift',
  topic: 'batch',
  inputs: [
    readingsInput,
    aCount('run', [3, 15], 'readings in a row that make a trend', { default: 6 }),
  ],
  output: {
    quantity: 'count',
    meaning: 'readings at the end that go one way',
    parts: { rising: 'count', falling: 'count' },
  },
  formula: 'so many readings in a row, each above (or below) the one before',
  source: 'from memory: ISO 7870-2 and Nelson, six in a row; older charts take seven',
  cautions: ['A trend is wear, heat or slipping: find which before the tool is moved.'],
  work: workTrend,
};

/** Share of the tolerance that the mean may be off before the tool is moved. Common practice, no source. */
const LEAVE_ALONE = 1 / 8;

function workOffset(values: RuleValues): Worked {
  const readings = listOf(values, 'readings');
  const [lower, upper] = [numberOf(values, 'lower'), numberOf(values, 'upper')];
  const last = readings.slice(-numberOf(values, 'last'));
  if (lower >= upper)
    return fault(worded`The lower limit ${show(lower, 7)} is not below ${show(upper, 7)}.`);
  if (last.length < 2)
    return fault('One reading says nothing about the tool; measure two or more.');
  const [mean, middle] = [meanOf(last), (lower + upper) / 2];
  const change = middle - mean;
  const small = Math.abs(change) <= LEAVE_ALONE * (upper - lower);
  const value = small ? 0 : change;
  const half = wordOf(values, 'dial') === 'radius' ? 2 : 1;
  const word = small ? 'leave alone' : change > 0 ? 'larger' : 'smaller';
  const advice = small
    ? 'within an eighth of the tolerance: leave the tool alone'
    : worded`move the tool by ${show(Math.abs(change) / half, 3)} mm on the dial, work ${word}`;
  return {
    ok: true,
    value,
    word,
    working: worded`middle ${show(middle, 7)} − mean of the last ${last.length}, ${show(mean, 7)} = ${show(change, 3)} mm on the size; ${advice}`,
    parts: {
      dial: lengthPart(value / half, 'change on the dial; positive makes the work larger'),
      mean: lengthPart(mean, 'mean of the last readings'),
    },
  };
}

const limitSpan = [-10_000, 10_000] as const;

export const toolOffset: Rule = {
  name: 'tool-offset',
  title: 'Whether to move the tool',
  topic: 'batch',
  inputs: [
    readingsInput,
    aNumber('lower', 'length', limitSpan, 'lower limit of size'),
    aNumber('upper', 'length', limitSpan, 'upper limit of size'),
    aCount('last', [2, 50], 'how many of the last readings count', { default: 5 }),
    aChoice('dial', ['diameter', 'radius'], 'what the dial reads', { default: 'diameter' }),
  ],
  output: {
    quantity: 'length',
    meaning: 'change of size to make; 0 is leave alone',
    parts: { dial: 'length', mean: 'length' },
  },
  formula:
    'change = middle of the limits − mean of the last readings; left alone within 1/8 of the tolerance',
  source:
    'common practice, no source; moving for every reading makes the spread worse (from memory: Deming, funnel)',
  cautions: [
    'Take up the backlash on the dial, and measure the next part before the batch goes on.',
  ],
  work: workOffset,
};
