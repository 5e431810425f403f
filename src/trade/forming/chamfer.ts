/** A chamfer by leg and angle. */

import { worded } from '../../texts/index.ts';
import { aLength, aNumber } from '../inputs.ts';
import { lengthPart } from '../part.ts';
import type { Rule, RuleValues, Worked } from '../rule.ts';
import { show } from '../show.ts';
import { numberOf } from '../values.ts';

function work(values: RuleValues): Worked {
  const [leg, angle] = [numberOf(values, 'leg'), numberOf(values, 'angle')];
  const radians = (angle * Math.PI) / 180;
  const depth = leg * Math.tan(radians);
  return {
    ok: true,
    value: depth,
    working: worded`${show(leg)} × tan ${show(angle)}° = ${show(depth, 5)} mm a side, ${show(2 * depth, 5)} mm on the diameter; face ${show(leg / Math.cos(radians), 5)} mm wide`,
    parts: {
      onDiameter: lengthPart(2 * depth, 'change of the diameter at the end'),
      face: lengthPart(leg / Math.cos(radians), 'width of the sloping face'),
    },
  };
}

export const chamfer: Rule = {
  name: 'chamfer',
  title: 'Chamfer by leg and angle',
  topic: 'forming',
  inputs: [
    aLength('leg', 200, 'length of the chamfer along the axis'),
    aNumber('angle', 'angle', [0, 85], 'angle of its face to the axis', {
      aboveMin: true,
      default: 45,
    }),
  ],
  output: {
    quantity: 'length',
    meaning: 'depth of the chamfer, a side',
    parts: { onDiameter: 'length', face: 'length' },
  },
  formula: 'depth = leg × tan(angle); face = leg ÷ cos(angle)',
  source: 'geometry',
  cautions: [
    'Fresh edges cut: break them with the spindle stopped, or with a file that has a handle.',
  ],
  work,
};
