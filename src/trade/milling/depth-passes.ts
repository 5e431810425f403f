/** How many cuts take a slot or a pocket down to its depth, and how deep each is. */

import { worded } from '../../texts/index.ts';
import { aLength, aNumber } from '../inputs.ts';
import { lengthPart, part } from '../part.ts';
import { stepsUp } from '../rounding.ts';
import type { Rule, RuleValues, Worked } from '../rule.ts';
import { show } from '../show.ts';
import { PRACTICE } from '../sources.ts';
import { fault, numberOf } from '../values.ts';

function work(values: RuleValues): Worked {
  const [depth, reached] = [numberOf(values, 'depth'), numberOf(values, 'reached')];
  const left = depth - reached;
  if (left < -1e-9) {
    return fault(
      worded`It is ${show(reached, 7)} mm deep already, more than ${show(depth, 7)} mm; no cut can put it back. Measure again before you judge it.`,
    );
  }
  const passes = Math.max(1, stepsUp(left, numberOf(values, 'deepestPass')));
  const value = Math.max(0, left) / passes;
  return {
    ok: true,
    value,
    working: worded`${show(depth, 7)} − ${show(reached, 7)} = ${show(left)} mm; ${passes} × ${show(value)} mm`,
    parts: {
      left: lengthPart(left, 'left to cut deeper'),
      passes: part(passes, 'count', 'cuts of that depth'),
    },
  };
}

export const depthPasses: Rule = {
  name: 'depth-passes',
  title: 'Cuts down to a depth',
  topic: 'milling',
  inputs: [
    aLength('depth', 500, 'depth that is wanted'),
    aNumber('reached', 'length', [0, 500], 'depth as measured now; 0 before the first cut'),
    aLength('deepestPass', 100, 'deepest cut along the cutter axis'),
  ],
  output: {
    quantity: 'length',
    meaning: 'depth of the next cut',
    parts: { left: 'length', passes: 'count' },
  },
  formula: 'left = wanted − reached; cuts = left ÷ deepest, rounded up; depth = left ÷ cuts',
  source: `depth left, by subtraction; equal cuts, a full slot at most half the cutter deep: ${PRACTICE}`,
  cautions: [
    'Measure only with the spindle stopped.',
    'Brush the chips out before the next cut: a packed slot breaks the cutter.',
  ],
  work,
};
