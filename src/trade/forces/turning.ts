/** Force and power of a turning cut, against the machine's motor. */

import { type Worded, worded } from '../../texts/index.ts';
import { aLength, aNumber } from '../inputs.ts';
import { toolInput, toolOf } from '../materials/inputs.ts';
import { lengthPart, part } from '../part.ts';
import type { NumberInput, Rule, RuleInput, RuleValues, Worked } from '../rule.ts';
import { show } from '../show.ts';
import { KIENZLE, POWER_PAGES } from '../sources.ts';
import { feedInput } from '../turning/feed.ts';
import { surfaceSpeedInput } from '../turning/spindle-speed.ts';
import { fault, numberIf, numberOf } from '../values.ts';
import {
  constantsOf,
  FORCE_TOPIC,
  forceCautions,
  metalInput,
  ownForceInputs,
  rakeInput,
  specificForce,
} from './kienzle.ts';

/** High-speed steel cuts a fifth harder than carbide; from memory, no page opened. */
const HSS_SHARE = 1.2;
/** Below this chip thickness, mm, the power law says too little. */
const THINNEST_CHIP = 0.05;

const radians = (degrees: number) => (degrees * Math.PI) / 180;

export const depthInput = aLength('depth', 50, 'depth of cut a side');
const approachInput = aNumber('approachAngle', 'angle', [15, 95], 'angle of the edge to the feed', {
  default: 90,
});

const cutInputs: readonly RuleInput[] = [
  metalInput,
  feedInput,
  depthInput,
  approachInput,
  rakeInput,
  { ...toolInput, default: 'carbide' },
  ...ownForceInputs,
];

interface Cut {
  readonly ok: true;
  readonly kc: number;
  readonly force: number;
  readonly thickness: number;
  readonly area: number;
  readonly working: Worded;
}

/** kc and force of the turning cut that the values describe. */
function cutOf(values: RuleValues): Cut | { readonly ok: false; readonly fault: Worded } {
  const constants = constantsOf(values);
  if (!constants.ok) return constants;
  const feed = numberOf(values, 'feedPerRev');
  const depth = numberOf(values, 'depth');
  const rake = numberOf(values, 'rake');
  const thickness = feed * Math.sin(radians(numberOf(values, 'approachAngle')));
  const hss = toolOf(values) === 'hss' ? HSS_SHARE : 1;
  const kc = specificForce(constants.force, thickness, rake) * hss;
  const area = feed * depth;
  const rakeText = rake === 0 ? '' : worded` × (1 − ${show(rake)} ÷ 100)`;
  const hssText = hss === 1 ? '' : worded` × ${hss} for HSS`;
  const thin = thickness < THINNEST_CHIP ? ' (thin chip: expect more)' : '';
  const working = worded`kc = ${show(constants.force.kc)} × ${show(thickness, 4)}^−${show(constants.force.mc)}${rakeText}${hssText} = ${show(kc)} N/mm²${thin}`;
  return { ok: true, kc, force: kc * area, thickness, area, working };
}

function cutParts(cut: Cut) {
  return {
    kc: part(cut.kc, 'stress', 'specific cutting force'),
    force: part(cut.force, 'force', 'cutting force'),
    chipThickness: lengthPart(cut.thickness, 'thickness of the chip'),
  };
}

export const cuttingForceRule: Rule = {
  name: 'cutting-force',
  title: 'Cutting force in turning',
  topic: FORCE_TOPIC,
  inputs: cutInputs,
  output: {
    quantity: 'force',
    meaning: 'force along the cut',
    parts: { kc: 'stress', force: 'force', chipThickness: 'length' },
  },
  formula: 'Fc = kc × f × ap, with h = f sin κ; × 1.2 for high-speed steel',
  source: `${KIENZLE}; share for high-speed steel from memory`,
  cautions: forceCautions,
  work: (values) => {
    const cut = cutOf(values);
    if (!cut.ok) return cut;
    const working = worded`${cut.working}; × ${show(cut.area)} mm² = ${show(cut.force)} N`;
    return { ok: true, value: cut.force, working, parts: cutParts(cut) };
  },
};

const motorInputs = [
  aNumber('motor', 'power', [0, 200], "power of the motor on the machine's card", {
    aboveMin: true,
    optional: true,
  }),
  aNumber('efficiency', 'ratio', [0.3, 1], 'share of the motor that reaches the spindle', {
    default: 0.75,
  }),
];

const MOTOR_FORMULA = 'motor = cutting power ÷ efficiency (0.7-0.85 for belts and gears)';

/** What the motor says to a power in kW at the spindle: nothing, or a refusal with what to reduce. */
function motorFault(values: RuleValues, atMotor: number, depth: number): Worded | undefined {
  const motor = numberIf(values, 'motor');
  if (motor === undefined || atMotor <= motor) return undefined;
  const most = show((depth * motor) / atMotor, 3);
  return worded`The cut needs ${show(atMotor, 3)} kW at the motor and the card gives ${show(motor)}; take a depth of at most ${most} mm, or less feed or speed.`;
}

export const cuttingPowerRule: Rule = {
  name: 'cutting-power',
  title: "Power of a turning cut against the machine's motor",
  topic: FORCE_TOPIC,
  inputs: [...cutInputs, surfaceSpeedInput, ...motorInputs],
  output: {
    quantity: 'power',
    meaning: 'power at the spindle',
    parts: { kc: 'stress', force: 'force', chipThickness: 'length', atMotor: 'power' },
  },
  formula: `Pc = Fc v ÷ 60 000; ${MOTOR_FORMULA}`,
  source: `${KIENZLE}; ${POWER_PAGES}`,
  cautions: forceCautions,
  work: (values) => {
    const cut = cutOf(values);
    if (!cut.ok) return cut;
    const speed = numberOf(values, 'surfaceSpeed');
    const value = (cut.force * speed) / 60_000;
    const atMotor = value / numberOf(values, 'efficiency');
    const wrong = motorFault(values, atMotor, numberOf(values, 'depth'));
    if (wrong !== undefined) return fault(wrong);
    return {
      ok: true,
      value,
      working: worded`${cut.working}; ${show(cut.force)} N × ${show(speed)} ÷ 60 000 = ${show(value, 4)} kW; at the motor ${show(atMotor, 4)} kW`,
      parts: { ...cutParts(cut), atMotor: part(atMotor, 'power', 'power the motor must give') },
    };
  },
};

export const deepestByPowerRule: Rule = {
  name: 'deepest-cut',
  title: 'Deepest cut that the motor allows',
  topic: FORCE_TOPIC,
  inputs: [
    ...cutInputs.filter((input) => input.name !== 'depth'),
    surfaceSpeedInput,
    { ...motorInputs[0], optional: false } as NumberInput,
    ...motorInputs.slice(1),
    aLength('toolLimit', 25, 'deepest cut the tool or the set-up allows', { optional: true }),
  ],
  output: { quantity: 'length', meaning: 'depth of cut a side', parts: { kc: 'stress' } },
  formula: 'ap = 60 000 × motor × efficiency ÷ (kc f v), not above the limit of the tool',
  source: `${KIENZLE}; ${POWER_PAGES}`,
  cautions: [...forceCautions, 'Chatter or a slipping belt comes before this on a light machine.'],
  work: (values) => deepestByPower(values),
};

function deepestByPower(values: RuleValues): Worked {
  const cut = cutOf({ ...values, depth: 1 });
  if (!cut.ok) return cut;
  const power = numberOf(values, 'motor') * numberOf(values, 'efficiency');
  const speed = numberOf(values, 'surfaceSpeed');
  const byMotor = (60_000 * power) / (cut.force * speed);
  const byTool = numberIf(values, 'toolLimit') ?? Number.POSITIVE_INFINITY;
  const ruledBy = byTool < byMotor ? "the tool's limit" : "the card's motor";
  return {
    ok: true,
    value: Math.min(byMotor, byTool),
    ruledBy,
    working: worded`${cut.working}; 60 000 × ${show(power)} kW ÷ (${show(cut.force)} N/mm × ${show(speed)}) = ${show(byMotor, 4)} mm (${ruledBy} rules)`,
    parts: { kc: part(cut.kc, 'stress', 'specific cutting force') },
  };
}

export const powerFromForceRule: Rule = {
  name: 'turning-power',
  title: 'Power of a turning cut from a known specific force',
  topic: FORCE_TOPIC,
  inputs: [
    surfaceSpeedInput,
    feedInput,
    depthInput,
    aNumber('specificForce', 'stress', [50, 20_000], 'specific cutting force kc'),
    { ...(motorInputs[1] as NumberInput), default: 1 },
  ],
  output: { quantity: 'power', meaning: 'power at the motor (at the spindle with efficiency 1)' },
  formula: 'P = ap f v kc ÷ (60 000 η)',
  source: POWER_PAGES,
  cautions: forceCautions,
  work: (values) => {
    const speed = numberOf(values, 'surfaceSpeed');
    const feed = numberOf(values, 'feedPerRev');
    const depth = numberOf(values, 'depth');
    const kc = numberOf(values, 'specificForce');
    const efficiency = numberOf(values, 'efficiency');
    const value = (depth * feed * speed * kc) / (60_000 * efficiency);
    const working = worded`${show(depth)} × ${show(feed)} × ${show(speed)} × ${show(kc)} ÷ (60 000 × ${show(efficiency)}) = ${show(value, 4)} kW`;
    return { ok: true, value, working };
  },
};
