/** Limits drawn in by what the gauge does not know, so that "within" is sure. */

import { type Worded, worded } from '../../texts/index.ts';
import { aLength, aNumber } from '../inputs.ts';
import { lengthPart, part } from '../part.ts';
import type { Rule, RuleValues, Worked } from '../rule.ts';
import { show } from '../show.ts';
import { fault, numberOf } from '../values.ts';

/** Why no reading could ever be surely within these limits, or undefined. All in mm. */
export function guardFault(lower: number, upper: number, uncertainty: number): Worded | undefined {
  if (lower >= upper) {
    return worded`The lower limit ${show(lower, 8)} mm is not below the upper limit ${show(upper, 8)} mm; check both.`;
  }
  if (2 * uncertainty < upper - lower) return undefined;
  return worded`A gauge uncertain by ${show(uncertainty)} mm cannot judge a tolerance of ${show(upper - lower)} mm: nothing would be surely within. Use a finer gauge.`;
}

function work(values: RuleValues): Worked {
  const [lower, upper] = [numberOf(values, 'lower'), numberOf(values, 'upper')];
  const uncertainty = numberOf(values, 'uncertainty');
  const wrong = guardFault(lower, upper, uncertainty);
  if (wrong !== undefined) return fault(wrong);
  const [from, to] = [lower + uncertainty, upper - uncertainty];
  const left = to - from;
  return {
    ok: true,
    value: left,
    working: worded`${show(lower, 8)} + ${show(uncertainty)} = ${show(from, 8)}; ${show(upper, 8)} − ${show(uncertainty)} = ${show(to, 8)}: ${show(left)} mm left of ${show(upper - lower)} mm`,
    parts: {
      from: lengthPart(from, 'smallest reading that is surely within'),
      to: lengthPart(to, 'largest reading that is surely within'),
      ratio: part((upper - lower) / uncertainty, 'ratio', 'tolerance to gauge uncertainty'),
    },
  };
}

export const guardBand: Rule = {
  name: 'guard-band',
  title: 'Limits drawn in by the gauge uncertainty',
  topic: 'fits',
  inputs: [
    aNumber('lower', 'length', [0, 4000], 'lower limit of size'),
    aNumber('upper', 'length', [0, 4000], 'upper limit of size'),
    aLength('uncertainty', 10, 'uncertainty of the gauge and its use'),
  ],
  output: {
    quantity: 'length',
    meaning: 'width that is left for a reading that is surely within',
    parts: { from: 'length', to: 'length', ratio: 'ratio' },
  },
  formula: 'from = lower + U; to = upper − U',
  source: 'from memory: ISO 14253-1, decision rule for conformity',
  cautions: ['Measure with the spindle stopped.'],
  work,
};
