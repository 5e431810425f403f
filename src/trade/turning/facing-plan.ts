/** Facing to a length: what is left, and how deep the next cut goes. */

import { worded } from '../../texts/index.ts';
import { aLength } from '../inputs.ts';
import { lengthPart, part } from '../part.ts';
import { stepsUp } from '../rounding.ts';
import type { Rule } from '../rule.ts';
import { show } from '../show.ts';
import { PRACTICE } from '../sources.ts';
import { fault, numberOf } from '../values.ts';
import { deepestInput } from './pass-plan.ts';

export const facingPlanRule: Rule = {
  name: 'facing-plan',
  title: 'Next cut when facing to length',
  topic: 'passes and dials',
  inputs: [
    aLength('measured', 5000, 'length as measured now'),
    aLength('finishLength', 5000, 'length wanted'),
    deepestInput,
  ],
  output: {
    quantity: 'length',
    meaning: 'depth of the next facing cut',
    parts: { left: 'length', cuts: 'count' },
  },
  formula: 'left = measured − wanted; cuts = left ÷ deepest, rounded up; depth = left ÷ cuts',
  source: `length left to remove, by subtraction; equal cuts: ${PRACTICE}`,
  cautions: ['Measure only with the spindle stopped.'],
  work: (values) => {
    const measured = numberOf(values, 'measured');
    const wanted = numberOf(values, 'finishLength');
    const left = measured - wanted;
    if (left < -1e-9) {
      return fault(
        worded`The work measures ${show(measured, 7)} mm, already shorter than ${show(wanted, 7)} mm; no cut can put it back. Measure again before you judge it.`,
      );
    }
    const cuts = Math.max(1, stepsUp(left, numberOf(values, 'deepestCut')));
    const value = Math.max(0, left) / cuts;
    return {
      ok: true,
      value,
      working: worded`${show(measured, 7)} − ${show(wanted, 7)} = ${show(left)} mm; ${cuts === 1 ? 'one cut' : worded`${cuts} equal cuts`} of ${show(value)} mm`,
      parts: {
        left: lengthPart(left, 'left to face off'),
        cuts: part(cuts, 'count', 'cuts of that depth'),
      },
    };
  },
};
