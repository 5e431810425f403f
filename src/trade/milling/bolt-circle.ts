/** Where the holes of a bolt circle stand, for two dials. */

import { sequence, worded } from '../../texts/index.ts';
import { aCount, aLength, aNumber } from '../inputs.ts';
import { lengthPart, part } from '../part.ts';
import type { Rule, RuleValues, Worked } from '../rule.ts';
import { show } from '../show.ts';
import { numberOf } from '../values.ts';

const DEGREE = Math.PI / 180;
/** Holes that the working line writes out; the parts hold all. */
const WRITTEN_OUT = 12;

function work(values: RuleValues): Worked {
  const [holes, diameter] = [numberOf(values, 'holes'), numberOf(values, 'diameter')];
  const [x0, y0] = [numberOf(values, 'centreX'), numberOf(values, 'centreY')];
  const start = numberOf(values, 'start');
  const angles = Array.from({ length: holes }, (_, index) => start + (index * 360) / holes);
  const x = angles.map((angle) => x0 + (diameter / 2) * Math.cos(angle * DEGREE));
  const y = angles.map((angle) => y0 + (diameter / 2) * Math.sin(angle * DEGREE));
  const chord = diameter * Math.sin((180 / holes) * DEGREE);
  const pairs = x
    .slice(0, WRITTEN_OUT)
    .map(
      (one, index) =>
        worded`${index + 1}: ${Number(one.toFixed(3))}, ${Number((y[index] ?? 0).toFixed(3))}`,
    );
  const more = holes > WRITTEN_OUT ? '; …' : '';
  return {
    ok: true,
    value: chord,
    working: worded`x = ${show(x0)} + ${show(diameter / 2)} cos, y = ${show(y0)} + ${show(diameter / 2)} sin of ${show(start)}° + i × ${show(360 / holes, 6)}°: ${sequence(pairs, '; ')}${more}; neighbours ${show(chord, 5)} mm apart`,
    parts: {
      x: lengthPart(x, 'x of each hole'),
      y: lengthPart(y, 'y of each hole'),
      angles: part(angles, 'angle', 'angle of each hole'),
    },
  };
}

const place = (name: string, meaning: string) =>
  aNumber(name, 'length', [-10_000, 10_000], meaning, { default: 0 });

export const boltCircle: Rule = {
  name: 'bolt-circle',
  title: 'Holes on a circle',
  topic: 'milling',
  inputs: [
    aCount('holes', [2, 360], 'number of holes'),
    aLength('diameter', 10_000, 'diameter of the circle through the holes'),
    aNumber('start', 'angle', [-360, 360], 'angle of the first hole, from x towards y', {
      default: 0,
    }),
    place('centreX', 'x of the centre'),
    place('centreY', 'y of the centre'),
  ],
  output: {
    quantity: 'length',
    meaning: 'distance between neighbouring holes, to check with',
    parts: { x: 'length', y: 'length', angles: 'angle' },
  },
  formula: 'x = x0 + r cos θ, y = y0 + r sin θ; chord = D sin(180° ÷ n)',
  source: 'geometry',
  cautions: [
    'Come to every hole from the same side on both dials, or the backlash goes into the work.',
  ],
  work,
};
