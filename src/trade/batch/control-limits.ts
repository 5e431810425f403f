/** Limits of an X-bar and R chart. */

import { sequence, type Worded, worded } from '../../texts/index.ts';
import { aCount, aList } from '../inputs.ts';
import { lengthPart, part } from '../part.ts';
import type { Rule, RuleValues, Worked } from '../rule.ts';
import { show } from '../show.ts';
import { fault, listOf, numberOf } from '../values.ts';
import { meanOf } from './spread.ts';

interface Factors {
  readonly a2: number;
  readonly d3: number;
  readonly d4: number;
  readonly d2: number;
}

/**
 * By subgroup size. Source: Factors for control charts (printed table), as in ISO 7870-2. D4 of 3 and
 * 5 is 2.574 and 2.114 as printed; computed anew from the range distribution 2.575 and 2.115.
 */
export const controlFactors: Readonly<Record<number, Factors>> = {
  2: { a2: 1.88, d3: 0, d4: 3.267, d2: 1.128 },
  3: { a2: 1.023, d3: 0, d4: 2.574, d2: 1.693 },
  4: { a2: 0.729, d3: 0, d4: 2.282, d2: 2.059 },
  5: { a2: 0.577, d3: 0, d4: 2.114, d2: 2.326 },
  6: { a2: 0.483, d3: 0, d4: 2.004, d2: 2.534 },
  7: { a2: 0.419, d3: 0.076, d4: 1.924, d2: 2.704 },
  8: { a2: 0.373, d3: 0.136, d4: 1.864, d2: 2.847 },
  9: { a2: 0.337, d3: 0.184, d4: 1.816, d2: 2.97 },
  10: { a2: 0.308, d3: 0.223, d4: 1.777, d2: 3.078 },
};

/** Numbers, from 1, of the values outside the two bounds. */
function outside(values: readonly number[], low: number, high: number): readonly number[] {
  return values.flatMap((one, index) => (one < low || one > high ? [index + 1] : []));
}

function verdict(means: readonly number[], ranges: readonly number[]): Worded {
  if (means.length === 0 && ranges.length === 0) return 'in control';
  const told = [
    ...(means.length > 0 ? [worded`mean of subgroup ${means.join(', ')}`] : []),
    ...(ranges.length > 0 ? [worded`range of subgroup ${ranges.join(', ')}`] : []),
  ];
  return worded`out of control: ${sequence(told, ' and ')}`;
}

function work(values: RuleValues): Worked {
  const [means, ranges] = [listOf(values, 'means'), listOf(values, 'ranges')];
  const size = numberOf(values, 'size');
  const factors = controlFactors[size];
  if (factors === undefined)
    return fault(worded`Subgroups of ${size} are not in the table; take 2 to 10.`);
  if (means.length !== ranges.length) {
    return fault(
      worded`There are ${means.length} means and ${ranges.length} ranges; give one of each a subgroup.`,
    );
  }
  const [mean, range] = [meanOf(means), meanOf(ranges)];
  const [low, high] = [mean - factors.a2 * range, mean + factors.a2 * range];
  const [rangeLow, rangeHigh] = [factors.d3 * range, factors.d4 * range];
  const word = verdict(outside(means, low, high), outside(ranges, rangeLow, rangeHigh));
  return {
    ok: true,
    value: mean,
    word,
    working: worded`mean ${show(mean, 7)} ± ${factors.a2} × ${show(range, 4)} = ${show(low, 7)} to ${show(high, 7)} mm; range ${show(rangeLow, 4)} to ${factors.d4} × ${show(range, 4)} = ${show(rangeHigh, 4)} mm; ${word}`,
    parts: {
      lower: lengthPart(low, 'lower limit of the means'),
      upper: lengthPart(high, 'upper limit of the means'),
      range: lengthPart(range, 'mean range'),
      rangeLower: lengthPart(rangeLow, 'lower limit of the ranges'),
      rangeUpper: lengthPart(rangeHigh, 'upper limit of the ranges'),
      sigma: lengthPart(range / factors.d2, 'standard deviation from the ranges'),
      subgroups: part(means.length, 'count', 'subgroups'),
    },
  };
}

export const controlLimits: Rule = {
  name: 'control-limits',
  title: 'Limits of an X-bar and R chart',
  topic: 'batch',
  inputs: [
    aList('means', 'length', [-10_000, 10_000], 'mean of each subgroup'),
    aList('ranges', 'length', [0, 1000], 'range of each subgroup'),
    aCount('size', [2, 10], 'readings in a subgroup', { default: 5 }),
  ],
  output: {
    quantity: 'length',
    meaning: 'mean of the means',
    parts: {
      lower: 'length',
      upper: 'length',
      range: 'length',
      rangeLower: 'length',
      rangeUpper: 'length',
      sigma: 'length',
      subgroups: 'count',
    },
  },
  formula: 'mean ± A2 R; R from D3 R to D4 R; σ = R ÷ d2',
  source: 'Factors for control charts (printed table); the same from memory: ISO 7870-2',
  cautions: ['Limits come from the process, not from the drawing: inside them can still be scrap.'],
  work,
};
