/** How far held work bends under the push of the tool. */

import { type Worded, worded } from '../../texts/index.ts';
import { aLength, aNumber } from '../inputs.ts';
import { materialInput } from '../materials/inputs.ts';
import { materialNamed } from '../materials/named.ts';
import { lengthPart } from '../part.ts';
import type { Rule, RuleInput, RuleValues, Worked } from '../rule.ts';
import { show } from '../show.ts';
import { SHIGLEY } from '../sources.ts';
import { fault, numberIf, numberOf, wordIf } from '../values.ts';

export const STIFFNESS_TOPIC = 'stiffness';

/** Second moment of a round bar or tube, mm⁴. */
export function secondMoment(diameter: number, bore = 0): number {
  return (Math.PI * (diameter ** 4 - bore ** 4)) / 64;
}

/** Bending of a bar held at one end and pushed at the other, mm. */
export function bendInChuck(force: number, length: number, stiffness: number): number {
  return (force * length ** 3) / (3 * stiffness);
}

/** Bending at distance `at` from the chuck of a bar held in chuck and centre, mm. */
export function bendChuckAndCentre(force: number, length: number, at: number, stiffness: number) {
  const rest = length - at;
  return (force * at ** 3 * rest ** 2 * (3 * length + rest)) / (12 * stiffness * length ** 3);
}

/** Bending at distance `at` from one end of a bar between centres, mm. */
export function bendBetweenCentres(force: number, length: number, at: number, stiffness: number) {
  const rest = length - at;
  return (force * at ** 2 * rest ** 2) / (3 * stiffness * length);
}

export const forceInput = aNumber(
  'force',
  'force',
  [0, 100_000],
  'push of the tool across the work',
  {
    aboveMin: true,
  },
);
const lengthInput = aLength('length', 10_000, 'free length');
const atInput = aLength(
  'at',
  10_000,
  'distance of the tool from the chuck or one end; middle if left out',
  {
    optional: true,
  },
);

export const barInputs: readonly RuleInput[] = [
  aLength('diameter', 1000, 'diameter of the bar'),
  aNumber('bore', 'length', [0, 1000], 'bore of a tube; 0 for solid bar', { default: 0 }),
  { ...materialInput, optional: true },
  aNumber('modulus', 'stress', [100, 1_000_000], 'modulus of elasticity, in place of a material', {
    optional: true,
  }),
];

interface Bar {
  readonly ok: true;
  /** E × I, N·mm² */
  readonly stiffness: number;
  readonly working: Worded;
}

/** E × I of the bar that the values describe, or why there is none. */
export function barOf(values: RuleValues): Bar | { readonly ok: false; readonly fault: Worded } {
  const diameter = numberOf(values, 'diameter');
  const bore = numberOf(values, 'bore');
  if (bore >= diameter) {
    const sentence = worded`A bore of ${show(bore)} mm leaves nothing of a ${show(diameter)} mm bar; give a smaller bore.`;
    return { ok: false, fault: sentence };
  }
  const material = wordIf(values, 'material');
  const modulus = numberIf(values, 'modulus') ?? (material && materialNamed(material).modulus);
  if (typeof modulus !== 'number') {
    return { ok: false, fault: 'Say what the bar is made of (material) or its modulus.' };
  }
  const moment = secondMoment(diameter, bore);
  const tube =
    bore === 0 ? worded`${show(diameter)}⁴` : worded`(${show(diameter)}⁴ − ${show(bore)}⁴)`;
  return {
    ok: true,
    stiffness: modulus * moment,
    working: worded`E = ${show(modulus)} N/mm², I = π × ${tube} ÷ 64 = ${show(moment)} mm⁴`,
  };
}

const parts = { diameterError: 'length' } as const;
const cautions = [
  'Chuck and centre give as well: the real bend is 1.3 to 2 times this.',
  'The push across the work is about 0.3 to 0.5 of the cutting force with an edge at 45-75°, less at 90°.',
];

function bent(value: number, working: Worded): Worked {
  return {
    ok: true,
    value,
    working: worded`${working} = ${show(value * 1000, 4)} µm; diameter ${show(value * 2000, 4)} µm large`,
    parts: { diameterError: lengthPart(value * 2, 'how much larger the diameter comes out') },
  };
}

export const bendInChuckRule: Rule = {
  name: 'bend-in-chuck',
  title: 'Bend of work held in the chuck alone',
  topic: STIFFNESS_TOPIC,
  inputs: [forceInput, lengthInput, ...barInputs],
  output: { quantity: 'length', meaning: 'bend at the free end', parts },
  formula: 'y = F L³ ÷ (3 E I); I = π (D⁴ − d⁴) ÷ 64',
  source: SHIGLEY,
  cautions,
  work: (values) => {
    const bar = barOf(values);
    if (!bar.ok) return bar;
    const force = numberOf(values, 'force');
    const length = numberOf(values, 'length');
    const value = bendInChuck(force, length, bar.stiffness);
    return bent(value, worded`${bar.working}; ${show(force)} × ${show(length)}³ ÷ (3 E I)`);
  },
};

type Bend = typeof bendBetweenCentres;

function supported(values: RuleValues, bend: Bend, formula: string): Worked {
  const bar = barOf(values);
  if (!bar.ok) return bar;
  const length = numberOf(values, 'length');
  const at = numberIf(values, 'at') ?? length / 2;
  if (at > length) {
    return fault(
      worded`The tool at ${show(at)} mm is beyond the free length of ${show(length)} mm; give a distance within it.`,
    );
  }
  const force = numberOf(values, 'force');
  const value = bend(force, length, at, bar.stiffness);
  return bent(
    value,
    worded`${bar.working}; F = ${show(force)} N at ${show(at)} of ${show(length)} mm: ${formula}`,
  );
}

export const bendChuckAndCentreRule: Rule = {
  name: 'bend-chuck-and-centre',
  title: 'Bend of work held in chuck and centre',
  topic: STIFFNESS_TOPIC,
  inputs: [forceInput, lengthInput, atInput, ...barInputs],
  output: { quantity: 'length', meaning: 'bend at the tool', parts },
  formula: 'y = F a³ b² (3 L + b) ÷ (12 E I L³), b = L − a; in the middle 7 F L³ ÷ (768 E I)',
  source: SHIGLEY,
  cautions,
  work: (values) => supported(values, bendChuckAndCentre, 'F a³ b² (3 L + b) ÷ (12 E I L³)'),
};

export const bendBetweenCentresRule: Rule = {
  name: 'bend-between-centres',
  title: 'Bend of work between centres',
  topic: STIFFNESS_TOPIC,
  inputs: [forceInput, lengthInput, atInput, ...barInputs],
  output: { quantity: 'length', meaning: 'bend at the tool', parts },
  formula: 'y = F a² b² ÷ (3 E I L), b = L − a; in the middle F L³ ÷ (48 E I)',
  source: SHIGLEY,
  cautions,
  work: (values) => supported(values, bendBetweenCentres, 'F a² b² ÷ (3 E I L)'),
};
