/** Turns of a quill or tailstock wheel for a depth. */

import { worded } from '../../texts/index.ts';
import { aLength } from '../inputs.ts';
import { lengthPart, part } from '../part.ts';
import { stepsDown, stepsHalfEven } from '../rounding.ts';
import type { Rule } from '../rule.ts';
import { show } from '../show.ts';
import { numberOf } from '../values.ts';

export const quillTurnsRule: Rule = {
  name: 'quill-turns',
  title: 'Turns of the wheel for a depth',
  topic: 'drilling',
  inputs: [
    aLength('depth', 3000, 'travel that is wanted'),
    aLength('perTurn', 100, 'travel for each turn of the wheel'),
    aLength('graduation', 10, 'one division of its dial', { default: 0.05 }),
  ],
  output: {
    quantity: 'ratio',
    meaning: 'turns, not rounded',
    parts: { wholeTurns: 'count', rest: 'length', divisions: 'count' },
  },
  formula:
    'turns = depth ÷ travel a turn; the rest ÷ graduation to the nearest division, a half to the even one',
  source: 'geometry',
  cautions: ['Set the depth stop as well, and take up the play of the wheel first.'],
  work: (values) => {
    const depth = numberOf(values, 'depth');
    const perTurn = numberOf(values, 'perTurn');
    const graduation = numberOf(values, 'graduation');
    const wholeTurns = stepsDown(depth, perTurn);
    const rest = Math.max(0, depth - wholeTurns * perTurn);
    const divisions = stepsHalfEven(rest, graduation);
    return {
      ok: true,
      value: depth / perTurn,
      working: worded`${show(depth)} ÷ ${show(perTurn)} = ${wholeTurns} turns and ${show(rest, 4)} mm, ${divisions} divisions of ${show(graduation)} mm`,
      parts: {
        wholeTurns: part(wholeTurns, 'count', 'whole turns'),
        rest: lengthPart(rest, 'travel after the whole turns'),
        divisions: part(divisions, 'count', 'divisions after the whole turns'),
      },
    };
  },
};
