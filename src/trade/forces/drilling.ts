/** Torque, thrust and power of a twist drill. */

import { type Worded, worded } from '../../texts/index.ts';
import { drillDiameterInput, pointAngleInput } from '../drilling/point.ts';
import { aChoice, aNumber } from '../inputs.ts';
import { lengthPart, part } from '../part.ts';
import type { Rule, RuleValues, Worked } from '../rule.ts';
import { show } from '../show.ts';
import { CARVILL } from '../sources.ts';
import { feedInput } from '../turning/feed.ts';
import { surfaceSpeedInput } from '../turning/spindle-speed.ts';
import { fault, numberIf, numberOf, wordOf } from '../values.ts';
import {
  constantsOf,
  FORCE_TOPIC,
  forceCautions,
  metalInput,
  ownForceInputs,
  specificForce,
} from './kienzle.ts';

const SOURCE =
  "from memory: a tool maker's training handbook; torque also El-Hofy, Fundamentals of Machining Processes 2e; constants: VDI 3323 groups";

interface DrillCut {
  readonly ok: true;
  readonly kc: number;
  readonly thickness: number;
  /** N·m */
  readonly torque: number;
  /** N */
  readonly thrust: number;
  readonly working: Worded;
}

function drillCut(values: RuleValues): DrillCut | { readonly ok: false; readonly fault: Worded } {
  const constants = constantsOf(values);
  if (!constants.ok) return constants;
  const diameter = numberOf(values, 'diameter');
  const feed = numberOf(values, 'feedPerRev');
  const half = Math.sin((numberOf(values, 'pointAngle') * Math.PI) / 360);
  const thickness = (feed / 2) * half;
  const kc = specificForce(constants.force, thickness);
  const torque = (kc * feed * diameter ** 2) / 8000;
  const thrust = 0.5 * kc * (diameter / 2) * feed * half;
  const working = worded`h = ${show(thickness, 3)} mm, kc = ${show(kc, 4)} N/mm²`;
  return { ok: true, kc, thickness, torque, thrust, working };
}

const inputs = [drillDiameterInput, feedInput, metalInput, pointAngleInput, ...ownForceInputs];
const parts = { kc: 'stress', chipThickness: 'length' } as const;

function cutParts(cut: DrillCut) {
  return {
    kc: part(cut.kc, 'stress', 'specific cutting force'),
    chipThickness: lengthPart(cut.thickness, 'thickness of the chip'),
  };
}

const cautions = [
  ...forceCautions,
  'The work must be clamped against this torque; it is largest as the drill breaks through.',
];

export const drillTorqueRule: Rule = {
  name: 'drill-torque',
  title: 'Torque of a drill',
  topic: FORCE_TOPIC,
  inputs,
  output: { quantity: 'torque', meaning: 'torque on drill and work', parts },
  formula: 'M = kc f D² ÷ 8000, with h = f ÷ 2 × sin(θ ÷ 2)',
  source: SOURCE,
  cautions,
  work: (values) => {
    const cut = drillCut(values);
    if (!cut.ok) return cut;
    const diameter = show(numberOf(values, 'diameter'));
    const feed = show(numberOf(values, 'feedPerRev'));
    const working = worded`${cut.working}; ${show(cut.kc, 4)} × ${feed} × ${diameter}² ÷ 8000 = ${show(cut.torque, 3)} Nm`;
    return { ok: true, value: cut.torque, working, parts: cutParts(cut) };
  },
};

export const drillThrustRule: Rule = {
  name: 'drill-thrust',
  title: 'Thrust of a drill',
  topic: FORCE_TOPIC,
  inputs,
  output: { quantity: 'force', meaning: 'force along the drill, an estimate', parts },
  formula: 'F = 0.5 kc × D ÷ 2 × f × sin(θ ÷ 2)',
  source: SOURCE,
  cautions: [...cautions, 'The chisel edge adds to it; a pilot hole takes that away.'],
  work: (values) => {
    const cut = drillCut(values);
    if (!cut.ok) return cut;
    const working = worded`${cut.working}; 0.5 × ${show(cut.kc, 4)} × ${show(numberOf(values, 'diameter') / 2)} × ${show(numberOf(values, 'feedPerRev'))} × sin(θ ÷ 2) = ${show(cut.thrust, 4)} N`;
    return { ok: true, value: cut.thrust, working, parts: cutParts(cut) };
  },
};

function power(values: RuleValues): Worked {
  const cut = drillCut(values);
  if (!cut.ok) return cut;
  const diameter = numberOf(values, 'diameter');
  const feed = numberOf(values, 'feedPerRev');
  const speed = numberOf(values, 'surfaceSpeed');
  const value = (cut.kc * feed * diameter * speed) / 240_000;
  const atMotor = value / numberOf(values, 'efficiency');
  const motor = numberIf(values, 'motor');
  if (motor !== undefined && atMotor > motor) {
    return fault(
      worded`The drill needs ${show(atMotor, 3)} kW at the motor and the card gives ${show(motor)}; drill a pilot hole first, or take less feed.`,
    );
  }
  return {
    ok: true,
    value,
    working: worded`${cut.working}; ${show(cut.kc, 4)} × ${show(feed)} × ${show(diameter)} × ${show(speed)} ÷ 240 000 = ${show(value, 4)} kW; at the motor ${show(atMotor, 4)} kW`,
    parts: { ...cutParts(cut), atMotor: part(atMotor, 'power', 'power the motor must give') },
  };
}

export const drillPowerRule: Rule = {
  name: 'drill-power',
  title: "Power of a drill against the machine's motor",
  topic: FORCE_TOPIC,
  inputs: [
    ...inputs,
    surfaceSpeedInput,
    aNumber('motor', 'power', [0, 200], "power of the motor on the machine's card", {
      aboveMin: true,
      optional: true,
    }),
    aNumber('efficiency', 'ratio', [0.3, 1], 'share of the motor that reaches the spindle', {
      default: 0.75,
    }),
  ],
  output: {
    quantity: 'power',
    meaning: 'power at the spindle',
    parts: { ...parts, atMotor: 'power' },
  },
  formula: 'Pc = kc f D v ÷ 240 000; motor = Pc ÷ efficiency',
  source: SOURCE,
  cautions,
  work: power,
};

/** Constants of the power law for torque. */
const LAW = {
  aluminium: 0.11,
  brass: 0.084,
  'cast-iron': 0.07,
  'mild-steel': 0.36,
  'tool-steel': 0.4,
} as const;

function lawConstant(name: string): number {
  return Object.entries(LAW).find(([key]) => key === name)?.[1] ?? 0;
}

export const drillTorqueLawRule: Rule = {
  name: 'drill-torque-law',
  title: 'Torque of a drill by the handbook power law',
  topic: FORCE_TOPIC,
  inputs: [
    drillDiameterInput,
    feedInput,
    aChoice('metal', Object.keys(LAW), 'what is drilled, as the handbook groups it'),
  ],
  output: { quantity: 'torque', meaning: 'torque on drill and work' },
  formula: 'T = k f^0.75 D^1.8',
  source: `k: ${CARVILL}; formula from memory: the same book, p. 193`,
  cautions,
  work: (values) => {
    const diameter = numberOf(values, 'diameter');
    const feed = numberOf(values, 'feedPerRev');
    const k = lawConstant(wordOf(values, 'metal'));
    const value = k * feed ** 0.75 * diameter ** 1.8;
    const working = worded`${k} × ${show(feed)}^0.75 × ${show(diameter)}^1.8 = ${show(value, 4)} Nm`;
    return { ok: true, value, working };
  },
};
