/** How well a process fits between two limits. */

import { worded } from '../../texts/index.ts';
import { aLength, aList, aNumber } from '../inputs.ts';
import { part } from '../part.ts';
import type { Rule, RuleValues, Worked } from '../rule.ts';
import { show } from '../show.ts';
import { fault, listOf, numberIf, numberOf } from '../values.ts';
import { deviationOf, meanOf } from './spread.ts';

interface Process {
  readonly mean: number;
  readonly sigma: number;
}

function processOf(values: RuleValues): Process | undefined {
  const readings = listOf(values, 'readings');
  if (readings.length > 1) return { mean: meanOf(readings), sigma: deviationOf(readings) };
  const [mean, sigma] = [numberIf(values, 'mean'), numberIf(values, 'sigma')];
  return mean === undefined || sigma === undefined ? undefined : { mean, sigma };
}

/** 1.33 is the usual least. Source: from memory: NIST/SEMATECH e-Handbook 6.1.6. */
function verdict(cpk: number): string {
  if (cpk < 0) return 'not capable, the mean is outside';
  if (cpk < 1) return 'not capable';
  return cpk < 4 / 3 ? 'just capable' : 'capable';
}

function work(values: RuleValues): Worked {
  const [lower, upper] = [numberOf(values, 'lower'), numberOf(values, 'upper')];
  const process = processOf(values);
  if (process === undefined) return fault('Give two or more readings, or both mean and sigma.');
  const { mean, sigma } = process;
  if (lower >= upper)
    return fault(worded`The lower limit ${show(lower, 7)} is not below ${show(upper, 7)}.`);
  if (sigma <= 0)
    return fault('All readings are the same: the gauge is too coarse to tell the spread.');
  const cp = (upper - lower) / (6 * sigma);
  const [above, below] = [(upper - mean) / (3 * sigma), (mean - lower) / (3 * sigma)];
  const cpk = Math.min(above, below);
  const word = verdict(cpk);
  return {
    ok: true,
    value: cpk,
    word,
    working: worded`Cp = (${show(upper, 7)} − ${show(lower, 7)}) ÷ (6 × ${show(sigma, 4)}) = ${show(cp, 4)}; Cpk = least of (${show(upper, 7)} − ${show(mean, 7)}) and (${show(mean, 7)} − ${show(lower, 7)}), ÷ (3 × ${show(sigma, 4)}) = ${show(cpk, 4)}: ${word}`,
    parts: {
      cp: part(cp, 'ratio', 'Cp, what it could do if centred'),
      upperShare: part(above, 'ratio', 'Cpk towards the upper limit'),
      lowerShare: part(below, 'ratio', 'Cpk towards the lower limit'),
    },
  };
}

const limitSpan = [-10_000, 10_000] as const;

export const capability: Rule = {
  name: 'capability',
  title: 'Cp and Cpk',
  topic: 'batch',
  inputs: [
    aNumber('lower', 'length', limitSpan, 'lower limit of size'),
    aNumber('upper', 'length', limitSpan, 'upper limit of size'),
    aList('readings', 'length', limitSpan, 'readings (or give mean and sigma)', true),
    aNumber('mean', 'length', limitSpan, 'mean', { optional: true }),
    aLength('sigma', 100, 'standard deviation', { optional: true }),
  ],
  output: {
    quantity: 'ratio',
    meaning: 'Cpk, how well the process fits where it stands',
    parts: { cp: 'ratio', upperShare: 'ratio', lowerShare: 'ratio' },
  },
  formula: 'Cp = (USL − LSL) ÷ 6 s; Cpk = least of (USL − mean) and (mean − LSL), ÷ 3 s',
  source:
    'from memory: NIST/SEMATECH e-Handbook 6.1.6; one web page divides Cp by 3 s, which is wrong',
  cautions: ['Fewer than about 25 readings tell little: read the figure as a hint.'],
  work,
};
