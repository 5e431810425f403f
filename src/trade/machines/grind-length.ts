/** How long a bar may be that is ground to length by hand: what is more is sawn off first. */

import { worded } from '../../texts/index.ts';
import { aLength, aNumber } from '../inputs.ts';
import type { Rule, RuleValues, Worked } from '../rule.ts';
import { show } from '../show.ts';
import { PRACTICE } from '../sources.ts';
import { fault, numberIf, numberOf } from '../values.ts';

const NEAR = 1e-9;

function work(values: RuleValues): Worked {
  const [length, most] = [numberOf(values, 'length'), numberOf(values, 'most')];
  const bar = numberIf(values, 'bar');
  const value = length + most;
  if (bar !== undefined && bar < length - NEAR) {
    return fault(
      worded`A bar of ${show(bar, 7)} mm is shorter than ${show(length, 7)} mm: no grinding makes it longer. Take a longer bar.`,
    );
  }
  if (bar !== undefined && bar > value + NEAR) {
    return fault(
      worded`A bar of ${show(bar, 7)} mm has ${show(bar - length, 5)} mm to come off, and at most ${show(most)} mm are ground. Saw it to ${show(value, 7)} mm or less first.`,
    );
  }
  return {
    ok: true,
    value,
    working: worded`${show(length, 7)} + ${show(most)} = ${show(value, 7)} mm`,
  };
}

export const grindLength: Rule = {
  name: 'grind-length',
  title: 'Longest bar to be ground to length',
  topic: 'other machines',
  inputs: [
    aLength('length', 5000, 'finished length'),
    aNumber('most', 'length', [0, 50], 'most that is ground off the end', { default: 5 }),
    aLength('bar', 5000, 'length of the bar now', { optional: true }),
  ],
  output: { quantity: 'length', meaning: 'longest bar that is ground to that length' },
  formula: 'longest = finished + most that is ground off',
  source: `sum; how much is ground and not sawn: ${PRACTICE}`,
  cautions: [
    'Much metal is sawn off: grinding it wears a groove into the wheel, and burns the bar.',
  ],
  work,
};
