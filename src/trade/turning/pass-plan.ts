/** How many cuts take the stock to size, and how deep each is. */

import { sequence, type Worded, worded } from '../../texts/index.ts';
import { aLength, aNumber } from '../inputs.ts';
import { lengthPart, part } from '../part.ts';
import { stepsUp } from '../rounding.ts';
import type { Rule } from '../rule.ts';
import { show, showList } from '../show.ts';
import { GROOVER } from '../sources.ts';
import { fault, numberOf } from '../values.ts';

export const finishInput = aLength('finishDiameter', 3000, 'diameter that is wanted');
export const deepestInput = aLength('deepestCut', 25, 'deepest cut a side');
export const allowanceInput = aNumber(
  'finishAllowance',
  'length',
  [0, 10],
  'what is left on the diameter for the finishing cut',
  { default: 0.5 },
);

/** Why a finishing cut cannot be taken in one, or undefined. */
export function allowanceFault(allowance: number, deepest: number): Worded | undefined {
  if (allowance / 2 <= deepest * (1 + 1e-9)) return undefined;
  return worded`A finishing allowance of ${show(allowance)} mm on the diameter is ${show(allowance / 2)} mm a side, deeper than the deepest cut of ${show(deepest)} mm; leave less.`;
}

export interface PassPlan {
  readonly roughingPasses: number;
  /** mm a side; 0 when there is no roughing */
  readonly roughingDepth: number;
  /** Diameters after each roughing pass, mm */
  readonly roughingDiameters: readonly number[];
  /** mm a side; 0 when nothing is left to finish */
  readonly finishingDepth: number;
}

/** Equal roughing passes to the allowance, then one finishing pass; boring when finish is larger. */
export function passPlan(
  stock: number,
  finish: number,
  deepest: number,
  allowance: number,
): PassPlan {
  const total = Math.abs(stock - finish);
  const side = Math.sign(finish - stock);
  const finishing = Math.min(allowance, total);
  const roughing = (total - finishing) / 2;
  const roughingPasses = stepsUp(roughing, deepest);
  const roughingDepth = roughingPasses === 0 ? 0 : roughing / roughingPasses;
  const roughingDiameters = Array.from(
    { length: roughingPasses },
    (_, index) => stock + side * 2 * roughingDepth * (index + 1),
  );
  return { roughingPasses, roughingDepth, roughingDiameters, finishingDepth: finishing / 2 };
}

function planWorking(stock: number, finish: number, deepest: number, plan: PassPlan): Worded {
  const { roughingPasses, roughingDepth, roughingDiameters, finishingDepth } = plan;
  const total = Math.abs(stock - finish);
  const parts = [worded`${show(total)} mm on the diameter = ${show(total / 2)} mm a side`];
  if (roughingPasses > 0) {
    parts.push(
      worded`roughing ${show(roughingPasses * roughingDepth)} ÷ ${show(deepest)} → ${roughingPasses} × ${show(roughingDepth)} mm to ${showList(roughingDiameters)}`,
    );
  }
  if (finishingDepth > 0)
    parts.push(worded`finishing ${show(finishingDepth)} mm to ${show(finish)}`);
  return sequence(parts, '; ');
}

export const passPlanRule: Rule = {
  name: 'pass-plan',
  title: 'Roughing and finishing passes',
  topic: 'passes and dials',
  inputs: [
    aLength('stockDiameter', 3000, 'diameter now'),
    finishInput,
    deepestInput,
    allowanceInput,
  ],
  output: {
    quantity: 'count',
    meaning: 'passes in all',
    parts: {
      roughingPasses: 'count',
      roughingDepth: 'length',
      roughingDiameters: 'length',
      finishingDepth: 'length',
    },
  },
  formula:
    'roughing passes = ⌈(|D0 − D1| − allowance) ÷ 2 ÷ deepest cut⌉, equal, and one to finish',
  source: `${GROOVER}; equal passes: practice`,
  cautions: ['Measure before the finishing cut, with the spindle stopped.'],
  work: (values) => {
    const stock = numberOf(values, 'stockDiameter');
    const finish = numberOf(values, 'finishDiameter');
    const deepest = numberOf(values, 'deepestCut');
    const allowance = numberOf(values, 'finishAllowance');
    const wrong = allowanceFault(Math.min(allowance, Math.abs(stock - finish)), deepest);
    if (wrong !== undefined) return fault(wrong);
    if (Math.abs(stock - finish) / 2 / deepest > 10_000) {
      return fault(
        worded`${show(deepest)} mm a side is so little that this takes more than 10 000 passes; cut deeper.`,
      );
    }
    const plan = passPlan(stock, finish, deepest, allowance);
    const value = plan.roughingPasses + (plan.finishingDepth > 0 ? 1 : 0);
    return {
      ok: true,
      value,
      working: planWorking(stock, finish, deepest, plan),
      parts: {
        roughingPasses: part(plan.roughingPasses, 'count', 'roughing passes'),
        roughingDepth: lengthPart(plan.roughingDepth, 'depth a side of each roughing pass'),
        roughingDiameters: lengthPart(plan.roughingDiameters, 'diameter after each roughing pass'),
        finishingDepth: lengthPart(plan.finishingDepth, 'depth a side of the finishing pass'),
      },
    };
  },
};
