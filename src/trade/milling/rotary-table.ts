/** Handwheel turns of a rotary table. */

import { type Worded, worded } from '../../texts/index.ts';
import { aCount, aNumber } from '../inputs.ts';
import { part } from '../part.ts';
import type { Rule, RuleValues, Worked } from '../rule.ts';
import { show } from '../show.ts';
import { numberOf } from '../values.ts';

/** "3° 25′ 43″", carried over when the seconds round up. */
function dial(degrees: number): Worded {
  const seconds = Math.round(degrees * 3600);
  return worded`${Math.floor(seconds / 3600)}° ${Math.floor(seconds / 60) % 60}′ ${seconds % 60}″`;
}

function work(values: RuleValues): Worked {
  const [divisions, ratio] = [numberOf(values, 'divisions'), numberOf(values, 'ratio')];
  const angle = 360 / divisions;
  const perTurn = 360 / ratio;
  const turns = Math.floor(angle / perTurn + 1e-9);
  const rest = Math.max(angle - turns * perTurn, 0);
  return {
    ok: true,
    value: angle,
    working: worded`360° ÷ ${divisions} = ${dial(angle)}; ${show(perTurn)}° a turn: ${turns} turns and ${dial(rest)}; set each from 0, never by adding`,
    parts: {
      turns: part(turns, 'count', 'whole turns of the handwheel'),
      rest: part(rest, 'angle', 'rest on the handwheel dial'),
      stations: part(
        Array.from({ length: divisions }, (_, index) => (index * 360) / divisions),
        'angle',
        'every station from 0',
      ),
    },
  };
}

export const rotaryTable: Rule = {
  name: 'rotary-table',
  title: 'Rotary table for a count',
  topic: 'milling',
  inputs: [
    aCount('divisions', [2, 720], 'divisions round the work'),
    aNumber('ratio', 'ratio', [1, 360], 'handwheel turns for one turn of the table', {
      default: 90,
    }),
  ],
  output: {
    quantity: 'angle',
    meaning: 'angle of one division',
    parts: { turns: 'count', rest: 'angle', stations: 'angle' },
  },
  formula: 'angle = 360 ÷ divisions; degrees a turn = 360 ÷ ratio',
  source: 'geometry',
  cautions: ['Lock the table for the cut; approach every station from the same side.'],
  work,
};
