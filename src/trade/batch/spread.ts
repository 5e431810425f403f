/** Mean, range and standard deviation of readings. */

import { worded } from '../../texts/index.ts';
import { aList } from '../inputs.ts';
import { lengthPart } from '../part.ts';
import type { ListInput, Rule, RuleValues, Worked } from '../rule.ts';
import { show } from '../show.ts';
import { fault, listOf } from '../values.ts';

export const readingsInput: ListInput = aList(
  'readings',
  'length',
  [-10_000, 10_000],
  'readings in the order they were made',
);

export const meanOf = (readings: readonly number[]) =>
  readings.reduce((sum, one) => sum + one, 0) / readings.length;

export const rangeOf = (readings: readonly number[]) =>
  Math.max(...readings) - Math.min(...readings);

/** Standard deviation of a sample, n − 1 below. Needs two readings. */
export function deviationOf(readings: readonly number[]): number {
  const mean = meanOf(readings);
  const squares = readings.reduce((sum, one) => sum + (one - mean) ** 2, 0);
  return Math.sqrt(squares / (readings.length - 1));
}

function work(values: RuleValues): Worked {
  const readings = listOf(values, 'readings');
  if (readings.length < 2) return fault('One reading has no spread; give two or more.');
  const [mean, range, deviation] = [meanOf(readings), rangeOf(readings), deviationOf(readings)];
  return {
    ok: true,
    value: mean,
    working: worded`${readings.length} readings: mean ${show(mean, 7)} mm, range ${show(Math.max(...readings), 7)} − ${show(Math.min(...readings), 7)} = ${show(range, 4)} mm, s (n − 1) ${show(deviation, 4)} mm`,
    parts: {
      range: lengthPart(range, 'largest less smallest'),
      deviation: lengthPart(deviation, 'standard deviation, n − 1'),
    },
  };
}

export const batchSpread: Rule = {
  name: 'batch-spread',
  title: 'Mean and spread of readings',
  topic: 'batch',
  inputs: [readingsInput],
  output: { quantity: 'length', meaning: 'mean', parts: { range: 'length', deviation: 'length' } },
  formula: 'mean = Σx ÷ n; R = max − min; s = √(Σ(x − mean)² ÷ (n − 1))',
  source: 'from memory: NIST/SEMATECH e-Handbook',
  cautions: [],
  work,
};
