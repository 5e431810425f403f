/** Surface speed of a grinding wheel against its mark. Above the mark there is no answer but no. */

import { type Worded, worded } from '../../texts/index.ts';
import { aLength, aNumber } from '../inputs.ts';
import { part } from '../part.ts';
import type { Rule, RuleValues, Worked } from '../rule.ts';
import { show } from '../show.ts';
import { fault, numberIf, numberOf } from '../values.ts';

const NEAR = 1 + 1e-9;

/** m/s of a wheel of this diameter in mm at rev/min. */
export const wheelSurfaceSpeed = (diameter: number, spindle: number) =>
  (Math.PI * diameter * spindle) / 60_000;

/** rev/min at which a wheel of this diameter in mm runs at m/s. */
export const wheelTurns = (diameter: number, speed: number) =>
  (60_000 * speed) / (Math.PI * diameter);

function refusal(what: Worded, mark: Worded): Worked {
  return fault(
    worded`${what} is above the wheel's mark of ${mark}: it can burst. Do not mount it; take a wheel marked for this spindle.`,
  );
}

function work(values: RuleValues): Worked {
  const [diameter, spindle] = [numberOf(values, 'wheel'), numberOf(values, 'spindleSpeed')];
  const [marked, turns] = [numberIf(values, 'markedSpeed'), numberIf(values, 'markedTurns')];
  if (marked === undefined && turns === undefined) {
    return fault(
      'Read the mark on the wheel: a speed in m/s or ft/min, or its highest rev/min. A wheel without a mark is not run.',
    );
  }
  const value = wheelSurfaceSpeed(diameter, spindle);
  if (turns !== undefined && spindle > turns * NEAR) {
    return refusal(worded`${show(spindle)} rev/min`, worded`${show(turns)} rev/min`);
  }
  if (marked !== undefined && value > marked * NEAR) {
    return refusal(worded`${show(value, 4)} m/s`, worded`${show(marked, 4)} m/s`);
  }
  const most = Math.min(
    marked === undefined ? Number.POSITIVE_INFINITY : wheelTurns(diameter, marked),
    turns ?? Number.POSITIVE_INFINITY,
  );
  return {
    ok: true,
    value,
    working: worded`π × ${show(diameter)} × ${show(spindle)} ÷ 60 000 = ${show(value, 4)} m/s, within the mark; this wheel allows at most ${show(most, 4)} rev/min`,
    parts: { most: part(most, 'spindleSpeed', 'highest spindle speed the mark allows') },
  };
}

export const wheelSpeed: Rule = {
  name: 'grinding-wheel-speed',
  title: 'Grinding wheel against its mark',
  topic: 'other machines',
  inputs: [
    aLength('wheel', 1000, 'diameter of the wheel, new'),
    aNumber('spindleSpeed', 'spindleSpeed', [0, 60_000], 'speed of the grinder spindle', {
      aboveMin: true,
    }),
    aNumber('markedSpeed', 'wheelSpeed', [0, 200], 'surface speed marked on the wheel', {
      aboveMin: true,
      optional: true,
    }),
    aNumber('markedTurns', 'spindleSpeed', [0, 60_000], 'highest speed marked on the wheel', {
      aboveMin: true,
      optional: true,
    }),
  ],
  output: {
    quantity: 'wheelSpeed',
    meaning: 'surface speed of the wheel',
    parts: { most: 'spindleSpeed' },
  },
  formula: 'v = π D n ÷ 60 000; refused above the mark',
  source:
    '29 CFR 1910.215(d)(1): spindle speed not above the mark; usual marks from memory: ANSI B7.1 (30.5 to 33 m/s, many 35)',
  cautions: [
    'Only trained people mount wheels. Look it over and ring-test it first; a dull sound is a reject.',
    'After mounting stand aside and let it run guarded for a minute.',
  ],
  work,
};
