/** A corner radius cut in steps with two handwheels. */

import { worded } from '../../texts/index.ts';
import { aChoice, aCount, aLength, aNumber } from '../inputs.ts';
import { lengthPart } from '../part.ts';
import type { Rule, RuleValues, Worked } from '../rule.ts';
import { show, showList } from '../show.ts';
import { fault, numberOf, wordOf } from '../values.ts';

/** mm, from where the tool just touches the diameter and the end face. */
interface Steps {
  readonly inward: readonly number[];
  readonly along: readonly number[];
}

/**
 * Stops on a quarter arc: step i stands at i × 90° ÷ n. The cross slide goes in R (1 − cos), the
 * carriage along R (1 − sin). A round tool rides on the radius it and the work make together.
 */
export function arcStops(radius: number, count: number): Steps {
  const angles = Array.from({ length: count + 1 }, (_, index) => (index * Math.PI) / (2 * count));
  return {
    inward: angles.map((angle) => radius * (1 - Math.cos(angle))),
    along: angles.map((angle) => radius * (1 - Math.sin(angle))),
  };
}

/** mm that the highest step stands above the arc when a sharp tool has cut every stop. */
export function proudest(radius: number, count: number): number {
  const step = Math.PI / (2 * count);
  return Math.max(
    ...Array.from({ length: count }, (_, index) => {
      const [now, next] = [index * step, (index + 1) * step];
      return radius * (Math.hypot(Math.cos(now), Math.sin(next)) - 1);
    }),
  );
}

function work(values: RuleValues): Worked {
  const [radius, nose] = [numberOf(values, 'radius'), numberOf(values, 'nose')];
  const count = numberOf(values, 'steps');
  const hollow = wordOf(values, 'shape') === 'hollow';
  if (hollow && nose >= radius) {
    return fault(
      worded`A nose of ${show(nose)} mm cannot cut a hollow of ${show(radius)} mm; take a smaller nose.`,
    );
  }
  const path = hollow ? radius - nose : radius + nose;
  const { inward, along } = arcStops(path, count);
  const proud = proudest(path, count);
  return {
    ok: true,
    value: proud,
    working: worded`path radius ${show(radius)} ${hollow ? '−' : '+'} ${show(nose)} = ${show(path)} mm; cross slide in ${showList(inward, 3)}; carriage ${showList(along, 3)} mm; steps stand at most ${show(proud, 2)} mm proud`,
    parts: {
      inward: lengthPart(inward, 'cross slide, in from touching the diameter'),
      along: lengthPart(along, 'carriage, along from touching the end face'),
    },
  };
}

export const radiusSteps: Rule = {
  name: 'radius-steps',
  title: 'Corner radius by two handwheels',
  topic: 'forming',
  inputs: [
    aLength('radius', 200, 'radius of the corner'),
    aCount('steps', [2, 60], 'steps over the quarter', { default: 9 }),
    aNumber('nose', 'length', [0, 20], 'nose radius of the tool; 0 is sharp', { default: 0 }),
    aChoice('shape', ['rounded', 'hollow'], 'rounded corner or hollow fillet', {
      default: 'rounded',
      said: { rounded: ['outside', 'round'], hollow: ['fillet', 'inside'] },
    }),
  ],
  output: {
    quantity: 'length',
    meaning: 'how far the highest step stands proud, to be blended away',
    parts: { inward: 'length', along: 'length' },
  },
  formula:
    'in = R (1 − cos θ), along = R (1 − sin θ); rounded R = r + nose, hollow R = r − nose; radial, not on the diameter',
  source: 'geometry',
  cautions: [
    'Blend the steps with a file that has a handle, left arm clear of the chuck, or with a form tool at low speed.',
  ],
  work,
};
