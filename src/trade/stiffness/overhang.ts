/** When work or a boring bar sticks out too far, and what to do about it. */

import { worded } from '../../texts/index.ts';
import { aChoice, aLength, aNumber } from '../inputs.ts';
import { lengthPart, part } from '../part.ts';
import type { Rule } from '../rule.ts';
import { show } from '../show.ts';
import { PRACTICE, SHIGLEY } from '../sources.ts';
import { fault, numberOf, wordOf } from '../values.ts';
import { bendInChuck, forceInput, STIFFNESS_TOPIC, secondMoment } from './beam.ts';

/** Longest free length in diameters. */
export const CHUCK_ALONE = 3;
const CHUCK_AND_CENTRE = 10;

const COURSE = `${PRACTICE}; that long work always needs a centre: GTZ turning course`;

function adviceFor(ratio: number): string {
  if (ratio <= CHUCK_ALONE + 1e-9) return 'chuck alone';
  return ratio <= CHUCK_AND_CENTRE + 1e-9 ? 'add a centre' : 'add a steady';
}

const workInputs = [
  aLength('length', 20_000, 'free length from the chuck'),
  aLength('diameter', 1000, 'smallest diameter of that length'),
];

const cautions = [
  'A light cut on tough work may stand a little more, soft or thin work less.',
  'For facing keep the free length to one and a half diameters (US Army TC 9-524).',
];

export const overhangRule: Rule = {
  name: 'overhang',
  title: 'How the work must be held for its length',
  topic: STIFFNESS_TOPIC,
  inputs: workInputs,
  output: {
    quantity: 'ratio',
    meaning: 'free length in diameters; the word says what it needs',
    parts: { longestInChuck: 'length', longestWithCentre: 'length' },
  },
  formula: 'up to 3 D chuck alone; up to 10 D chuck and centre; above that a steady or follow rest',
  source: COURSE,
  cautions,
  work: (values) => {
    const length = numberOf(values, 'length');
    const diameter = numberOf(values, 'diameter');
    const value = length / diameter;
    const word = adviceFor(value);
    return {
      ok: true,
      value,
      word,
      working: worded`${show(length)} ÷ ${show(diameter)} = ${show(value, 3)} diameters (3 in the chuck, 10 with a centre): ${word}`,
      parts: {
        longestInChuck: lengthPart(CHUCK_ALONE * diameter, 'longest in the chuck alone'),
        longestWithCentre: lengthPart(CHUCK_AND_CENTRE * diameter, 'longest with a centre'),
      },
    };
  },
};

export const steadyRule: Rule = {
  name: 'steadies',
  title: 'How many steadies long work needs',
  topic: STIFFNESS_TOPIC,
  inputs: workInputs,
  output: { quantity: 'count', meaning: 'steadies', parts: { span: 'length' } },
  formula: 'as many as leave each free span at most 10 D',
  source: PRACTICE,
  cautions: ['Oil the jaws of a fixed steady, and set them on a true, turned place.'],
  work: (values) => {
    const length = numberOf(values, 'length');
    const diameter = numberOf(values, 'diameter');
    const spans = Math.max(1, Math.ceil(length / (CHUCK_AND_CENTRE * diameter) - 1e-9));
    const span = length / spans;
    return {
      ok: true,
      value: spans - 1,
      working: worded`${show(length)} ÷ (10 × ${show(diameter)}) → ${spans} spans of ${show(span, 4)} mm: ${spans - 1} steadies`,
      parts: { span: lengthPart(span, 'free span between supports') },
    };
  },
};

const SHANKS = { steel: { widths: 4, modulus: 207_000 }, carbide: { widths: 6, modulus: 600_000 } };
const shankInput = aChoice('shank', ['steel', 'carbide'], 'what the bar is made of', {
  default: 'steel',
});
const shankOf = (word: string) => (word === 'carbide' ? SHANKS.carbide : SHANKS.steel);
const barInput = aLength('diameter', 200, 'diameter of the boring bar');

export const boringOverhangRule: Rule = {
  name: 'boring-bar-overhang',
  title: 'How far a boring bar may stick out',
  topic: STIFFNESS_TOPIC,
  inputs: [
    barInput,
    shankInput,
    aNumber('depth', 'length', [0, 2000], 'depth that must be bored; 0 if not known', {
      default: 0,
    }),
  ],
  output: { quantity: 'length', meaning: 'longest overhang' },
  formula: 'steel 4 D, carbide 6 D',
  source: `${PRACTICE}; change to carbide at 4 : 1 printed in a boring-bar catalogue page (title not kept)`,
  cautions: ['Halve the overhang and the bend falls to an eighth.'],
  work: (values) => {
    const diameter = numberOf(values, 'diameter');
    const word = wordOf(values, 'shank');
    const value = diameter * shankOf(word).widths;
    const depth = numberOf(values, 'depth');
    if (depth > value) {
      return fault(
        worded`Boring ${show(depth)} mm deep needs more than the ${show(value)} mm a ${show(diameter)} mm ${word} bar may stick out; take a thicker bar or carbide.`,
      );
    }
    const working = worded`${shankOf(word).widths} × ${show(diameter)} = ${show(value)} mm (${word})`;
    return { ok: true, value, working };
  },
};

export const boringBendRule: Rule = {
  name: 'boring-bar-bend',
  title: 'Bend of a boring bar',
  topic: STIFFNESS_TOPIC,
  inputs: [forceInput, barInput, aLength('overhang', 2000, 'how far it sticks out'), shankInput],
  output: {
    quantity: 'length',
    meaning: 'bend at the tip',
    parts: { diameterError: 'length', widths: 'ratio' },
  },
  formula: 'y = F L³ ÷ (3 E I); E 207 000 for steel, 600 000 for carbide',
  source: `${SHIGLEY}; carbide from memory: 550-650 kN/mm²`,
  cautions: ['Spring passes at the same setting show the bend: stop when nothing more comes off.'],
  work: (values) => {
    const force = numberOf(values, 'force');
    const diameter = numberOf(values, 'diameter');
    const overhang = numberOf(values, 'overhang');
    const { modulus } = shankOf(wordOf(values, 'shank'));
    const value = bendInChuck(force, overhang, modulus * secondMoment(diameter));
    return {
      ok: true,
      value,
      working: worded`${show(force)} × ${show(overhang)}³ ÷ (3 × ${modulus} × π × ${show(diameter)}⁴ ÷ 64) = ${show(value * 1000, 4)} µm`,
      parts: {
        diameterError: lengthPart(value * 2, 'how much smaller the bore comes out'),
        widths: part(overhang / diameter, 'ratio', 'overhang in diameters'),
      },
    };
  },
};
