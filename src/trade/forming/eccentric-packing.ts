/** Packing under one jaw of a three-jaw chuck, to turn off centre. */

import { worded } from '../../texts/index.ts';
import { aChoice, aLength } from '../inputs.ts';
import { lengthPart } from '../part.ts';
import type { Rule, RuleValues, Worked } from '../rule.ts';
import { show } from '../show.ts';
import { fault, numberOf, wordOf } from '../values.ts';

/**
 * mm of packing for an offset e on work of radius r. Narrow jaws touch along a line:
 * 1.5 e + √(r² − ¾ e²) − r. Wide flat jaws touch square to their own travel: 1.5 e.
 */
export function packingFor(offset: number, radius: number, jaws: string): number {
  if (jaws === 'wide') return 1.5 * offset;
  return 1.5 * offset + Math.sqrt(radius * radius - 0.75 * offset * offset) - radius;
}

function work(values: RuleValues): Worked {
  const [diameter, offset] = [numberOf(values, 'diameter'), numberOf(values, 'offset')];
  const jaws = wordOf(values, 'jaws');
  const radius = diameter / 2;
  if (offset > radius / 2) {
    return fault(
      worded`An offset of ${show(offset)} mm is more than a quarter of ${show(diameter)} mm work; three jaws will not hold it safely, use four jaws or a fixture.`,
    );
  }
  const packing = packingFor(offset, radius, jaws);
  const sum =
    jaws === 'wide'
      ? worded`1.5 × ${show(offset)}`
      : worded`1.5 × ${show(offset)} + √(${show(radius)}² − 0.75 × ${show(offset)}²) − ${show(radius)}`;
  return {
    ok: true,
    value: packing,
    working: worded`${sum} = ${show(packing, 5)} mm under one jaw; throw ${show(2 * offset)} mm on a dial indicator`,
    parts: {
      throw: lengthPart(2 * offset, 'what an indicator on the diameter shows in one turn'),
      rough: lengthPart(1.5 * offset, 'rule of thumb, 1.5 × offset'),
    },
  };
}

export const eccentricPacking: Rule = {
  name: 'eccentric-packing',
  title: 'Packing for an eccentric',
  topic: 'forming',
  inputs: [
    aLength('diameter', 500, 'diameter that is held'),
    aLength('offset', 100, 'offset wanted, half the throw'),
    aChoice('jaws', ['narrow', 'wide'], 'jaws that touch along a line, or wide flat ones', {
      default: 'narrow',
      said: { narrow: ['hard jaws'], wide: ['flat', 'flat jaws', 'soft jaws'] },
    }),
  ],
  output: {
    quantity: 'length',
    meaning: 'thickness of the packing under one jaw',
    parts: { throw: 'length', rough: 'length' },
  },
  formula: 'packing = 1.5 e + √(r² − 0.75 e²) − r; wide flat jaws 1.5 e',
  source: 'geometry; Thibault, Turning an Eccentric Hole in a 3-Jaw Chuck',
  cautions: [
    'Work off centre is out of balance: start at the lowest speed and stand clear of its plane.',
    'Packing must be as long as the jaw, curved to the work, and cannot be allowed to fall out when a jaw eases.',
  ],
  work,
};
