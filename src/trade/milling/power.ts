/** Power at a milling spindle, against what the motor gives. */

import { worded } from '../../texts/index.ts';
import { constantsOf, metalInput, ownForceInputs, specificForce } from '../forces/kienzle.ts';
import { aLength, aNumber } from '../inputs.ts';
import { part } from '../part.ts';
import type { Rule, RuleValues, Worked } from '../rule.ts';
import { show } from '../show.ts';
import { fault, numberIf, numberOf } from '../values.ts';
import { perToothInput, spindleInput, teethInput } from './table-feed.ts';

const DEGREE = Math.PI / 180;

/**
 * Mean chip thickness in mm of a cut at the side of the cutter: the chip's volume over its arc,
 * fz sin κ × width ÷ (radius × arc). `lead` in degrees.
 */
export function meanChip(perTooth: number, width: number, cutter: number, lead: number): number {
  const arc = Math.acos(1 - (2 * width) / cutter);
  return (2 * perTooth * width * Math.sin(lead * DEGREE)) / (cutter * arc);
}

/** kW: depth × width × feed × specific force. mm, mm/min, N/mm². */
export const cuttingPower = (depth: number, width: number, feed: number, force: number) =>
  (depth * width * feed * force) / 60e6;

function tooMuch(needed: number, motor: number, depth: number): Worked {
  return fault(
    worded`The cut needs ${show(needed, 3)} kW at the motor, which has ${show(motor)} kW; take at most ${show((depth * motor) / needed, 2)} mm of this depth, or less width or feed.`,
  );
}

function work(values: RuleValues): Worked {
  const [depth, width] = [numberOf(values, 'depth'), numberOf(values, 'width')];
  const [cutter, perTooth] = [numberOf(values, 'cutter'), numberOf(values, 'feedPerTooth')];
  const efficiency = numberOf(values, 'efficiency');
  const constants = constantsOf(values);
  if (!constants.ok) return constants;
  if (width > cutter)
    return fault(worded`A cut ${show(width)} mm wide is wider than the ${show(cutter)} mm cutter.`);
  const feed = perTooth * numberOf(values, 'teeth') * numberOf(values, 'spindleSpeed');
  const chip = meanChip(perTooth, width, cutter, numberOf(values, 'edgeAngle'));
  const force = specificForce(constants.force, chip);
  const value = cuttingPower(depth, width, feed, force);
  const needed = value / efficiency;
  const motor = numberIf(values, 'motor');
  if (motor !== undefined && needed > motor * (1 + 1e-9)) return tooMuch(needed, motor, depth);
  return {
    ok: true,
    value,
    working: worded`${constants.title}: mean chip ${show(chip, 3)} mm, ${show(force, 4)} N/mm²; ${show(depth)} × ${show(width)} × ${show(feed, 5)} × ${show(force, 4)} ÷ 60 000 000 = ${show(value, 4)} kW; ÷ ${show(efficiency)} = ${show(needed, 4)} kW at the motor`,
    parts: {
      atMotor: part(needed, 'power', 'power the motor must give'),
      meanChip: part(chip, 'feedPerTooth', 'mean chip thickness'),
      specificForce: part(force, 'stress', 'specific cutting force at that chip'),
      removal: part(depth * width * feed, 'volumeRate', 'metal removed'),
    },
  };
}

export const millingPower: Rule = {
  name: 'milling-cut-power',
  title: 'Power of a milling cut',
  topic: 'milling',
  inputs: [
    aLength('depth', 200, 'depth along the cutter axis'),
    aLength('width', 1000, 'width of the cut across the cutter'),
    aLength('cutter', 1000, 'diameter of the cutter'),
    teethInput,
    perToothInput,
    spindleInput,
    metalInput,
    ...ownForceInputs,
    aNumber('edgeAngle', 'angle', [5, 90], 'angle of the main edge', { default: 90 }),
    aNumber('efficiency', 'ratio', [0.3, 1], 'share of motor power that reaches the cutter', {
      default: 0.8,
    }),
    aNumber('motor', 'power', [0, 500], 'motor power on the card', {
      aboveMin: true,
      optional: true,
    }),
  ],
  output: {
    quantity: 'power',
    meaning: 'power at the cutter',
    parts: {
      atMotor: 'power',
      meanChip: 'feedPerTooth',
      specificForce: 'stress',
      removal: 'volumeRate',
    },
  },
  formula: 'P = ap ae vf kc ÷ 60 000 000; kc = kc1.1 hm^−mc; hm = 2 fz sin κ ae ÷ (D × arc)',
  source:
    'Tool-maker technical pages on milling power (titles not kept); mean chip from memory: cutter maker training handbook; for a thin cut it is near fz √(ae/D)',
  cautions: [
    'A cutter that stalls can lift or throw the work: clamp against the feed and stay clear.',
  ],
  work,
};
