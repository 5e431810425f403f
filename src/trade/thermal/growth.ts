/** What warmth does to a length, and the size at 20 °C behind a warm reading. */

import { worded } from '../../texts/index.ts';
import { aLength, aNumber } from '../inputs.ts';
import { materialInput } from '../materials/inputs.ts';
import { materialNamed } from '../materials/named.ts';
import { lengthPart } from '../part.ts';
import type { Rule, RuleValues } from '../rule.ts';
import { show } from '../show.ts';
import { EXPANSION } from '../sources.ts';
import { numberIf, numberOf, wordIf } from '../values.ts';

const topic = 'temperature';
const REFERENCE = 20;
/** Gauge steel, 1e-6 per kelvin, ± 1. */
const GAUGE_STEEL = 11.5;

const cautions = [
  'Work straight from the cut is warmer inside than it feels; let it cool before the last cut is judged.',
  'Hot work burns. Do not measure it in the spindle while it turns.',
];

const coefficientInput = aNumber(
  'expansion',
  'expansion',
  [0.1, 300],
  'thermal expansion, in place of a material',
  { optional: true },
);

const materialChoice = {
  ...materialInput,
  meaning: 'what the work is made of',
  optional: true,
};

function coefficient(values: RuleValues): number | undefined {
  const word = wordIf(values, 'material');
  return (
    numberIf(values, 'expansion') ??
    (word === undefined ? undefined : materialNamed(word).expansion)
  );
}

const MISSING = 'Say what the work is made of (material) or how it grows (expansion, 1e-6/K).';

function temperatureInput(name: string, meaning: string, standard?: number) {
  return aNumber(
    name,
    'temperature',
    [-50, 600],
    meaning,
    standard === undefined ? {} : { default: standard },
  );
}

export const growthRule: Rule = {
  name: 'thermal-growth',
  title: 'Growth of a length with temperature',
  topic,
  inputs: [
    aLength('length', 20_000, 'length or diameter'),
    materialChoice,
    coefficientInput,
    temperatureInput('temperature', 'temperature of the work'),
    temperatureInput('from', 'temperature the length is known at', REFERENCE),
  ],
  output: { quantity: 'length', meaning: 'growth; below nothing when it shrinks' },
  formula: 'ΔL = α L (T − T0)',
  source: EXPANSION,
  cautions,
  work: (values) => {
    const alpha = coefficient(values);
    if (alpha === undefined) return { ok: false, fault: MISSING };
    const length = numberOf(values, 'length');
    const rise = numberOf(values, 'temperature') - numberOf(values, 'from');
    const value = alpha * 1e-6 * length * rise;
    const working = worded`${show(alpha)} × 10⁻⁶ × ${show(length)} mm × ${show(rise)} K = ${show(value, 4)} mm`;
    return { ok: true, value, working };
  },
};

export const sizeAtReferenceRule: Rule = {
  name: 'size-at-20',
  title: 'Size at 20 °C behind a warm reading',
  topic,
  inputs: [
    aLength('reading', 20_000, 'what the gauge shows'),
    materialChoice,
    coefficientInput,
    temperatureInput('temperature', 'temperature of the work'),
    temperatureInput('gaugeTemperature', 'temperature of the gauge', REFERENCE),
    aNumber('gaugeExpansion', 'expansion', [0, 300], 'thermal expansion of the gauge', {
      default: GAUGE_STEEL,
    }),
  ],
  output: { quantity: 'length', meaning: 'size at 20 °C', parts: { correction: 'length' } },
  formula: 'L20 = reading × (1 + αg (Tg − 20)) ÷ (1 + α (T − 20))',
  source: `${EXPANSION}; reference temperature 20 °C: ISO 1 (from memory); gauge steel 11.5 ± 1`,
  cautions,
  work: (values) => {
    const alpha = coefficient(values);
    if (alpha === undefined) return { ok: false, fault: MISSING };
    const reading = numberOf(values, 'reading');
    const work = numberOf(values, 'temperature') - REFERENCE;
    const gauge = numberOf(values, 'gaugeTemperature') - REFERENCE;
    const gaugeAlpha = numberOf(values, 'gaugeExpansion');
    const value = (reading * (1 + gaugeAlpha * 1e-6 * gauge)) / (1 + alpha * 1e-6 * work);
    return {
      ok: true,
      value,
      working: worded`${show(reading, 7)} × (1 + ${show(gaugeAlpha)} × 10⁻⁶ × ${show(gauge)}) ÷ (1 + ${show(alpha)} × 10⁻⁶ × ${show(work)}) = ${show(value, 7)} mm`,
      parts: { correction: lengthPart(value - reading, 'to add to the reading') },
    };
  },
};
