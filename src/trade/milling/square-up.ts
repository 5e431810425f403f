/** The order in which the six faces of a block are milled square. */

import { sequence, worded } from '../../texts/index.ts';
import { aNumber } from '../inputs.ts';
import { part } from '../part.ts';
import type { Rule, RuleValues, Worked } from '../rule.ts';
import { show } from '../show.ts';
import { numberOf } from '../values.ts';

/** Each face is milled against one that is already true. */
const order = [
  '1 the largest face, on parallels',
  '2 a long edge, face 1 to the fixed jaw with a round bar at the moving jaw',
  '3 the other long edge, face 1 to the fixed jaw, face 2 down on parallels',
  '4 the back, face 1 down on parallels, to size',
  '5 an end, set upright with a square against face 2',
  '6 the other end, face 5 down, to length',
] as const;

function work(values: RuleValues): Worked {
  const rough = ['Length', 'Width', 'Height'].map((name) => numberOf(values, `rough${name}`));
  const finish = ['Length', 'Width', 'Height'].map((name) => numberOf(values, `finish${name}`));
  const each = rough.map((size, index) => (size - (finish[index] ?? size)) / 2);
  const least = Math.min(...each);
  if (least <= 0) {
    return {
      ok: false,
      fault: 'The blank is not larger than the block in every direction; it will not clean up.',
    };
  }
  return {
    ok: true,
    value: order.length,
    working: worded`${sequence(order, '; ')}. To come off each of the two faces: ${each.map((one) => show(one, 4)).join(', ')} mm (length, width, height)`,
    parts: { each: part(each, 'length', 'to come off each face of length, width, height') },
  };
}

const size = (name: string, meaning: string) =>
  aNumber(name, 'length', [0, 2000], meaning, { aboveMin: true });

export const squareUp: Rule = {
  name: 'square-up',
  title: 'Order of faces for a square block',
  topic: 'milling',
  inputs: [
    size('roughLength', 'length of the blank'),
    size('roughWidth', 'width of the blank'),
    size('roughHeight', 'height of the blank'),
    size('finishLength', 'length of the block'),
    size('finishWidth', 'width of the block'),
    size('finishHeight', 'height of the block'),
  ],
  output: { quantity: 'count', meaning: 'faces to mill', parts: { each: 'length' } },
  formula:
    'each face against one that is already true; half of the difference off each of two faces',
  source: 'common practice, no source',
  cautions: [
    'Break the edges between faces with the spindle stopped; sharp corners lift the work and cut hands.',
    'Tighten, tap down on the parallels, and try every parallel before the spindle starts.',
  ],
  work,
};
