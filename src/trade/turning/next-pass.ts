/** The next cut after a measurement: how far to move the dial. */

import { type Worded, worded } from '../../texts/index.ts';
import { aChoice, aLength } from '../inputs.ts';
import { lengthPart, part } from '../part.ts';
import { stepsDown, stepsUp } from '../rounding.ts';
import type { Rule, RuleValues, Worked } from '../rule.ts';
import { show } from '../show.ts';
import { PRACTICE } from '../sources.ts';
import { fault, numberOf, wordOf } from '../values.ts';
import { DIAL_SOURCE, dialPerTravel, dialReadsInput, graduationInput } from './dial.ts';
import { allowanceFault, allowanceInput, deepestInput, finishInput } from './pass-plan.ts';

/** What stands between the work as measured and its finish diameter. */
interface Remaining {
  /** mm on the diameter */
  readonly left: number;
  readonly allowance: number;
  /** mm a side */
  readonly deepest: number;
}

/** Depth a side of the next cut before rounding, and whether it is meant to reach the finish. */
interface Cut {
  readonly depth: number;
  readonly last: boolean;
}

function roughing({ left, allowance, deepest }: Remaining): Cut {
  const side = (left - allowance) / 2;
  return { depth: side / Math.max(1, stepsUp(side, deepest)), last: false };
}

/** The cut to the finish, when what is left is not deeper than the deepest cut. */
function finishing({ left, deepest }: Remaining): Cut {
  return left / 2 <= deepest * (1 + 1e-9)
    ? { depth: left / 2, last: true }
    : { depth: deepest, last: false };
}

/** Roughing of less than this share of the finishing depth is taken with the finishing cut. */
const NOT_WORTH_A_CUT = 0.5;

function worthACut({ left, allowance, deepest }: Remaining, depth: number, smallest: number) {
  if (stepsDown(depth, smallest) === 0) return false;
  return left / 2 > deepest || depth > (allowance / 2) * NOT_WORTH_A_CUT;
}

function chooseCut(remaining: Remaining, smallest: number): Cut {
  if (remaining.left <= remaining.allowance + 1e-9) return finishing(remaining);
  const rough = roughing(remaining);
  return worthACut(remaining, rough.depth, smallest) ? rough : finishing(remaining);
}

function overcut(values: RuleValues, left: number): Worked {
  const inside = wordOf(values, 'direction') === 'inside';
  const side = inside ? 'larger' : 'smaller';
  return fault(
    worded`The work measures ${show(numberOf(values, 'measured'), 8)} mm, already ${show(-left, 4)} mm ${side} than the finish diameter of ${show(numberOf(values, 'finishDiameter'), 8)} mm; no cut can put it back. Measure again before you judge it.`,
  );
}

function dialWorking(divisions: number, graduation: number): Worded {
  if (divisions === 0) return 'less than a division: no cut';
  return worded`down to ${divisions} × ${show(graduation)} = ${show(divisions * graduation)} mm`;
}

function cutWorking(left: number, cut: Cut, perTravel: number): Worded {
  if (left === 0) return 'at size, nothing left';
  const name = cut.last ? 'finishing' : 'roughing';
  const reads = perTravel === 2 ? ' × 2 on a diameter dial' : ' on a radius dial';
  return worded`${show(left)} mm left on the diameter; ${name} cut ${show(cut.depth)} mm a side${reads} = ${show(cut.depth * perTravel)}`;
}

function answer(values: RuleValues, { left, allowance, deepest }: Remaining): Worked {
  const graduation = numberOf(values, 'graduation');
  const perTravel = dialPerTravel(values);
  const cut = chooseCut({ left, allowance, deepest }, graduation / perTravel);
  const divisions = stepsDown(cut.depth * perTravel, graduation);
  const value = divisions * graduation;
  const depth = value / perTravel;
  const sign = wordOf(values, 'direction') === 'inside' ? 1 : -1;
  const after = numberOf(values, 'measured') + sign * 2 * depth;
  const dial = dialWorking(divisions, graduation);
  return {
    ok: true,
    value,
    working: worded`${cutWorking(left, cut, perTravel)}, ${dial}; then ${show(after, 7)} mm`,
    parts: {
      depthASide: lengthPart(depth, 'depth a side of this cut'),
      left: lengthPart(left, 'left on the diameter before this cut'),
      diameterAfter: lengthPart(after, 'diameter after this cut'),
      divisions: part(divisions, 'count', 'divisions of the dial'),
      lastPass: part(cut.last ? 1 : 0, 'count', '1 when this cut finishes the diameter'),
    },
  };
}

export const nextPassRule: Rule = {
  name: 'next-pass',
  title: 'Dial movement for the next cut',
  topic: 'passes and dials',
  inputs: [
    aLength('measured', 3000, 'diameter as measured now'),
    finishInput,
    deepestInput,
    allowanceInput,
    dialReadsInput,
    graduationInput,
    aChoice('direction', ['outside', 'inside'], 'turned outside or bored inside', {
      default: 'outside',
    }),
  ],
  output: {
    quantity: 'length',
    meaning: 'dial movement, rounded down to a division',
    parts: {
      depthASide: 'length',
      left: 'length',
      diameterAfter: 'length',
      divisions: 'count',
      lastPass: 'count',
    },
  },
  formula:
    'equal roughing cuts down to the allowance, then what is left (a rest of up to half the finishing depth goes with it); dial = depth × 2 (diameter) or × 1 (radius), ' +
    'rounded down to the graduation, never half-even, so that metal is left rather than lost',
  source: `${DIAL_SOURCE}; equal passes and rounding down: ${PRACTICE}`,
  cautions: [
    'Measure only with the spindle stopped.',
    'Take up the backlash: come to the number from the same side as for the last cut.',
  ],
  work: (values) => {
    const inside = wordOf(values, 'direction') === 'inside';
    const gap = numberOf(values, 'measured') - numberOf(values, 'finishDiameter');
    const left = inside ? -gap : gap;
    if (left < -1e-9) return overcut(values, left);
    const allowance = numberOf(values, 'finishAllowance');
    const deepest = numberOf(values, 'deepestCut');
    const wrong = allowanceFault(Math.min(allowance, Math.max(left, 0)), deepest);
    if (wrong !== undefined) return fault(wrong);
    return answer(values, { left: Math.max(left, 0), allowance, deepest });
  },
};
