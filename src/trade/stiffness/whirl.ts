/** How fast overhanging work may turn before it begins to whip. */

import { type Worded, worded } from '../../texts/index.ts';
import { aLength, aNumber } from '../inputs.ts';
import { materialInput } from '../materials/inputs.ts';
import { materialNamed } from '../materials/named.ts';
import { part } from '../part.ts';
import type { Rule, RuleValues, Worked } from '../rule.ts';
import { show } from '../show.ts';
import { PRACTICE } from '../sources.ts';
import { fault, numberIf, numberOf, wordIf } from '../values.ts';
import { STIFFNESS_TOPIC } from './beam.ts';

/** First root of cos x cosh x = −1, squared: a beam held at one end. */
const FIRST_MODE = 1.8751 ** 2;
/** Share of the whirling speed that is used. Common practice, no source. */
const SHARE = 1 / 3;
/** Beyond this nothing in a workshop turns. */
const FASTEST = 60_000;

interface Bar {
  readonly diameter: number;
  readonly bore: number;
  readonly length: number;
  /** N/mm² */
  readonly modulus: number;
  /** kg/m³ */
  readonly density: number;
}

/** Speed in rev/min at which a bar held at one end bends of itself: 60/(2π) × 1.8751² × √(EI ÷ ρA) ÷ L². */
export function whirlingSpeed({ diameter, bore, length, modulus, density }: Bar): number {
  // I ÷ A of a tube is (D² + d²) ÷ 16, in mm²; E ÷ ρ in mm²/s² is 1e6 × N/mm² ÷ (kg/m³ × 1e-6).
  const gyration = (diameter ** 2 + bore ** 2) / 16;
  const sound = (modulus / density) * 1e12;
  return ((60 / (2 * Math.PI)) * FIRST_MODE * Math.sqrt(sound * gyration)) / length ** 2;
}

function barOf(values: RuleValues): Bar | { readonly fault: Worded } {
  const name = wordIf(values, 'material');
  const row = name === undefined ? undefined : materialNamed(name);
  const modulus = numberIf(values, 'modulus') ?? row?.modulus;
  const density = numberIf(values, 'density') ?? row?.density;
  if (modulus === undefined || density === undefined)
    return { fault: 'Name a material, or give both modulus and density.' };
  const [diameter, bore] = [numberOf(values, 'diameter'), numberOf(values, 'bore')];
  if (bore >= diameter) {
    return { fault: worded`A bore of ${show(bore)} mm leaves nothing of ${show(diameter)} mm.` };
  }
  return { diameter, bore, length: numberOf(values, 'length'), modulus, density };
}

function work(values: RuleValues): Worked {
  const bar = barOf(values);
  if ('fault' in bar) return fault(bar.fault);
  const critical = whirlingSpeed(bar);
  const value = Math.min(critical * SHARE, FASTEST);
  return {
    ok: true,
    value,
    ruledBy: "the work's overhang",
    working: worded`whips at 60 ÷ 2π × ${show(FIRST_MODE, 4)} × √(${show(bar.modulus)} N/mm² ÷ ${show(bar.density)} kg/m³ × (${show(bar.diameter)}² + ${show(bar.bore)}²) ÷ 16) ÷ ${show(bar.length)}² = ${show(critical, 4)} rev/min; a third of it: ${show(value, 4)}`,
    parts: { whirling: part(critical, 'spindleSpeed', 'speed at which it whips') },
  };
}

export const overhangSpeedRule: Rule = {
  name: 'overhang-speed',
  title: 'Highest speed of overhanging work',
  topic: STIFFNESS_TOPIC,
  inputs: [
    aLength(
      'length',
      20_000,
      'length that is held by nothing, before the chuck or behind the spindle',
    ),
    aLength('diameter', 1000, 'diameter of the bar'),
    aNumber('bore', 'length', [0, 1000], 'bore of a tube; 0 for solid bar', { default: 0 }),
    { ...materialInput, optional: true },
    aNumber('modulus', 'stress', [100, 1_000_000], 'modulus, in place of a material', {
      optional: true,
    }),
    aNumber('density', 'density', [100, 25_000], 'density, in place of a material', {
      optional: true,
    }),
  ],
  output: {
    quantity: 'spindleSpeed',
    meaning: "the work's limit, to give as workLimit",
    parts: { whirling: 'spindleSpeed' },
  },
  formula: 'n = 60 ÷ 2π × 1.8751² × √(E I ÷ ρ A) ÷ L², and a third of it',
  source: `beam held at one end, first mode 1.8751 (from memory: Blevins, Formulas for Natural Frequency and Mode Shape); a third of it: ${PRACTICE}`,
  cautions: [
    'A straight bar that runs true: a bent one whips sooner. Stock behind the spindle wants a guided tube, or no overhang at all.',
    'Never stand in line with stock that sticks out; start slowly.',
  ],
  work,
};
