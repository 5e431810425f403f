/** How far a mill head leans, from an indicator swept round. */

import { worded } from '../../texts/index.ts';
import { aLength, aNumber } from '../inputs.ts';
import { lengthPart } from '../part.ts';
import type { Rule, RuleValues, Worked } from '../rule.ts';
import { show } from '../show.ts';
import { fault, numberOf } from '../values.ts';

/** mm that a leaning cutter hollows the face: sin(lean) × what the arc bulges over the width. */
export function hollow(sine: number, cutter: number, width: number): number {
  return (sine * (cutter - Math.sqrt(cutter * cutter - width * width))) / 2;
}

function work(values: RuleValues): Worked {
  const [sweep, difference] = [numberOf(values, 'sweep'), numberOf(values, 'difference')];
  const [cutter, width] = [numberOf(values, 'cutter'), numberOf(values, 'width')];
  if (difference >= sweep) {
    return fault(
      worded`A difference of ${show(difference)} mm over ${show(sweep)} mm is no lean but a misread dial.`,
    );
  }
  if (width > cutter)
    return fault(
      worded`A face ${show(width)} mm wide is wider than the cutter, ${show(cutter)} mm.`,
    );
  const sine = difference / sweep;
  const value = (Math.asin(sine) * 180) / Math.PI;
  const [dish, step] = [hollow(sine, cutter, width), sine * width];
  return {
    ok: true,
    value,
    working: worded`${show(difference)} ÷ ${show(sweep)}: lean ${show(value, 3)}°, ${show(sine * 100, 3)} mm in 100; cutter ${show(cutter)} on ${show(width)} mm: ${show(dish, 3)} mm hollow when it leans along the feed, ${show(step, 3)} mm slope a pass when across`,
    parts: {
      per100: lengthPart(sine * 100, 'lean over 100 mm'),
      hollow: lengthPart(dish, 'hollow of the face when the head leans along the feed'),
      step: lengthPart(step, 'slope over one pass when it leans across the feed'),
    },
  };
}

export const trammingError: Rule = {
  name: 'tramming-error',
  title: 'Lean of a mill head',
  topic: 'milling',
  inputs: [
    aLength('sweep', 2000, 'diameter the indicator sweeps'),
    aNumber('difference', 'length', [0, 50], 'difference of the two opposite readings'),
    aLength('cutter', 1000, 'diameter of the cutter', { default: 50 }),
    aLength('width', 1000, 'width of the cut', { default: 40 }),
  ],
  output: {
    quantity: 'angle',
    meaning: 'lean of the spindle',
    parts: { per100: 'length', hollow: 'length', step: 'length' },
  },
  formula: 'sin(lean) = difference ÷ sweep; hollow = sin(lean) (D − √(D² − w²)) ÷ 2',
  source: 'geometry',
  cautions: ['Sweep by hand with the spindle out of gear and the machine isolated.'],
  work,
};
