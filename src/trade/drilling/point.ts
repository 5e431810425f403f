/** The point of a drill, and the depths that follow from it. */

import { type Worded, worded } from '../../texts/index.ts';
import { aLength, aNumber } from '../inputs.ts';
import { lengthPart } from '../part.ts';
import type { Rule } from '../rule.ts';
import { show } from '../show.ts';
import { fault, numberOf } from '../values.ts';

const topic = 'drilling';
const SOURCE =
  'geometry; Groover, Fundamentals of Modern Manufacturing 4e; Drilling forces and power';

/** Length of the cone of a drill, mm, for a point angle in degrees. */
export function pointLength(diameter: number, pointAngle: number): number {
  return diameter / 2 / Math.tan((pointAngle * Math.PI) / 360);
}

export const drillDiameterInput = aLength('diameter', 150, 'diameter of the drill');
export const pointAngleInput = aNumber('pointAngle', 'angle', [60, 160], 'angle of the point', {
  default: 118,
});

function pointWorking(diameter: number, angle: number): Worded {
  const point = show(pointLength(diameter, angle), 4);
  return worded`${show(diameter)} ÷ 2 ÷ tan(${show(angle)}° ÷ 2) = ${point} mm`;
}

export const drillPointRule: Rule = {
  name: 'drill-point',
  title: "Length of a drill's point",
  topic,
  inputs: [drillDiameterInput, pointAngleInput],
  output: { quantity: 'length', meaning: 'length of the cone' },
  formula: 'A = D ÷ 2 ÷ tan(θ ÷ 2)',
  source: SOURCE,
  cautions: [],
  work: (values) => {
    const diameter = numberOf(values, 'diameter');
    const angle = numberOf(values, 'pointAngle');
    return {
      ok: true,
      value: pointLength(diameter, angle),
      working: pointWorking(diameter, angle),
    };
  },
};

export const drillDepthRule: Rule = {
  name: 'drill-depth',
  title: 'Depth of the tip for a full-diameter depth',
  topic,
  inputs: [
    drillDiameterInput,
    aLength('depth', 3000, 'depth to the full diameter, or thickness to go through'),
    pointAngleInput,
    aNumber('beyond', 'length', [0, 50], 'how far to go on, to break through clean', {
      default: 0,
    }),
  ],
  output: {
    quantity: 'length',
    meaning: 'depth of the tip from the surface',
    parts: { point: 'length' },
  },
  formula: 'tip = depth + D ÷ 2 ÷ tan(θ ÷ 2) + beyond',
  source: SOURCE,
  cautions: ['Know what stands under the work before the tip goes through.'],
  work: (values) => {
    const diameter = numberOf(values, 'diameter');
    const angle = numberOf(values, 'pointAngle');
    const depth = numberOf(values, 'depth');
    const beyond = numberOf(values, 'beyond');
    const point = pointLength(diameter, angle);
    const value = depth + point + beyond;
    const more = beyond === 0 ? '' : worded` + ${show(beyond)}`;
    return {
      ok: true,
      value,
      working: worded`point ${pointWorking(diameter, angle)}; ${show(depth)} + ${show(point, 4)}${more} = ${show(value, 4)} mm`,
      parts: { point: lengthPart(point, 'length of the point') },
    };
  },
};

export const countersinkDepthRule: Rule = {
  name: 'countersink-depth',
  title: 'Depth for a countersink or spot of a diameter',
  topic,
  inputs: [
    aLength('topDiameter', 150, 'diameter to leave at the surface'),
    aNumber('holeDiameter', 'length', [0, 150], 'diameter of the hole there; 0 for none', {
      default: 0,
    }),
    { ...pointAngleInput, default: 90, meaning: 'angle of the countersink or spot drill' },
  ],
  output: {
    quantity: 'length',
    meaning: 'travel after the tool touches the edge of the hole (or the surface)',
  },
  formula: 'depth = (D − d) ÷ 2 ÷ tan(θ ÷ 2)',
  source: 'geometry',
  cautions: ['Run slowly and press evenly; a countersink that chatters is too fast.'],
  work: (values) => {
    const top = numberOf(values, 'topDiameter');
    const hole = numberOf(values, 'holeDiameter');
    const angle = numberOf(values, 'pointAngle');
    if (hole >= top) {
      return fault(
        worded`The hole of ${show(hole)} mm is not smaller than the ${show(top)} mm that is wanted at the surface; give a larger one.`,
      );
    }
    const value = pointLength(top - hole, angle);
    const working = worded`(${show(top)} − ${show(hole)}) ÷ 2 ÷ tan(${show(angle)}° ÷ 2) = ${show(value, 4)} mm`;
    return { ok: true, value, working };
  },
};
