/** Whether the pieces of a batch drift, and what to do about it on the dial. */

import { worded } from '../../texts/index.ts';
import { aChoice, aCount, aLength, aNumber } from '../inputs.ts';
import { lengthPart, part } from '../part.ts';
import { stepsHalfEven } from '../rounding.ts';
import type { Rule, RuleValues, Worked } from '../rule.ts';
import { show } from '../show.ts';
import { fault, listOf, numberOf, wordOf } from '../values.ts';
import { meanOf, readingsInput } from './spread.ts';
import { runAtEnd } from './trend.ts';

interface Run {
  readonly word: 'rising' | 'falling' | 'steady';
  readonly length: number;
}

function runOf(readings: readonly number[], wanted: number): Run {
  const [up, down] = [runAtEnd(readings, 1), runAtEnd(readings, -1)];
  if (up >= wanted) return { word: 'rising', length: up };
  return down >= wanted
    ? { word: 'falling', length: down }
    : { word: 'steady', length: Math.max(up, down) };
}

/** Only against the drift: pieces that come nearer to the middle are left to come. */
function changeOf({ word }: Run, mean: number, middle: number): number {
  const change = middle - mean;
  if (word === 'rising') return Math.min(change, 0);
  return word === 'falling' ? Math.max(change, 0) : 0;
}

/** Divisions split in half by eye, to the nearest, a half to the even one; signed as the size goes. */
function settable(change: number, perDial: number, graduation: number): number {
  const half = graduation / 2;
  return Math.sign(change) * stepsHalfEven(Math.abs(change) / perDial, half) * half * perDial;
}

function work(values: RuleValues): Worked {
  const readings = listOf(values, 'readings');
  const [lower, upper] = [numberOf(values, 'lower'), numberOf(values, 'upper')];
  if (lower >= upper)
    return fault(worded`The lower limit ${show(lower, 7)} is not below ${show(upper, 7)}.`);
  const run = runOf(readings, numberOf(values, 'run'));
  const last = readings.slice(-run.length);
  const [mean, middle] = [meanOf(last), (lower + upper) / 2];
  const perDial = wordOf(values, 'dial') === 'radius' ? 2 : 1;
  const value = settable(changeOf(run, mean, middle), perDial, numberOf(values, 'graduation'));
  const inwards = wordOf(values, 'side') === 'inside' ? 1 : -1;
  // Adding nothing makes a zero of either sign a plain one.
  const dial = (inwards * value) / perDial + 0;
  const size = Math.abs(value);
  const todo =
    size === 0 ? 'leave the dial' : worded`${show(size, 4)} mm ${value < 0 ? 'smaller' : 'larger'}`;
  return {
    ok: true,
    value: value + 0,
    word: run.word,
    working: worded`the last ${run.length} of ${readings.length}: ${run.word}; middle ${show(middle, 7)} − their mean ${show(mean, 7)} = ${show(middle - mean, 3)} mm on the size, to half a division: ${todo}`,
    parts: {
      dial: lengthPart(dial, 'change on the dial; positive is a deeper cut'),
      mean: lengthPart(mean, 'mean of the run'),
      run: part(run.length, 'count', 'readings at the end that go one way'),
    },
  };
}

const limitSpan = [-10_000, 10_000] as const;

export const drift: Rule = {
  name: 'drift',
  title: 'Drift of a batch, and the dial',
  topic: 'batch',
  inputs: [
    readingsInput,
    aNumber('lower', 'length', limitSpan, 'lower limit of size'),
    aNumber('upper', 'length', limitSpan, 'upper limit of size'),
    aCount('run', [3, 15], 'readings in a row that are a warning', { default: 4 }),
    aChoice('side', ['outside', 'inside'], 'turned outside or bored inside', {
      default: 'outside',
    }),
    aChoice('dial', ['diameter', 'radius'], 'what the dial reads', { default: 'diameter' }),
    aLength('graduation', 1, 'one division of the dial', { default: 0.02 }),
  ],
  output: {
    quantity: 'length',
    meaning: 'change of size to make; 0 is leave the dial',
    parts: { dial: 'length', mean: 'length', run: 'count' },
  },
  formula:
    'so many readings in a row, each above (or below) the one before; then change = middle of the limits − mean of those, only against the drift, to the nearest half division (a half to the even one)',
  source:
    'warning at four: common practice, no source; a trend proper is six in a row (from memory: ISO 7870-2 and Nelson); change to the middle: common practice, no source',
  cautions: [
    'A drift is wear, heat or slipping: find which before the tool is moved.',
    'Take up the backlash on the dial, and measure the next piece before the batch goes on.',
  ],
  work,
};
