/** Parting off: how fast, how far the blade may stick out, and how far the bar. */

import { worded } from '../../texts/index.ts';
import { aLength, aNumber } from '../inputs.ts';
import { cuttingSpeed } from '../materials/cutting-speed.ts';
import { coolantInput, materialInput, questionOf, toolInput } from '../materials/inputs.ts';
import { materialNamed } from '../materials/named.ts';
import { lengthPart, part } from '../part.ts';
import type { Rule } from '../rule.ts';
import { show } from '../show.ts';
import { PRACTICE } from '../sources.ts';
import { CHUCK_ALONE } from '../stiffness/overhang.ts';
import { fault, numberIf, numberOf, wordOf } from '../values.ts';
import { cardSpeed, looseCardInputs } from './card-speed.ts';

/** How far a blade may stick out, in blade widths. */
export const LONGEST_IN_WIDTHS = 8;

const cautions = [
  'Part close to the chuck, with the tool on centre and square to the work.',
  'Never part between centres right through; leave a stub, stop, and saw or break it.',
];

export const partingSpeedRule: Rule = {
  name: 'parting-speed',
  title: 'Spindle speed for parting off',
  topic: 'parting',
  inputs: [
    aLength('diameter', 3000, 'diameter of the bar'),
    materialInput,
    toolInput,
    coolantInput,
    ...looseCardInputs,
  ],
  output: {
    quantity: 'spindleSpeed',
    meaning: 'speed to set',
    parts: { ideal: 'spindleSpeed', surfaceSpeed: 'surfaceSpeed' },
  },
  formula: 'parting speed of the material, 1000 v ÷ (π D), next lower on the card',
  source: `Materials table; parting at half to six tenths of turning: ${PRACTICE}`,
  cautions,
  work: (values) => {
    const material = materialNamed(wordOf(values, 'material'));
    const speed = cuttingSpeed(material, questionOf(values, 'part'));
    if (!speed.ok) return speed;
    const answer = cardSpeed(speed.value, numberOf(values, 'diameter'), values);
    if (!answer.ok) return answer;
    return { ...answer, working: worded`${speed.working}; ${answer.working}` };
  },
};

export const partingBladeRule: Rule = {
  name: 'parting-blade',
  title: 'How far the parting blade sticks out',
  topic: 'parting',
  inputs: [
    aLength('diameter', 500, 'diameter of the bar'),
    aNumber('boreDiameter', 'length', [0, 500], 'bore of a tube; 0 for solid bar', { default: 0 }),
    aLength('bladeWidth', 12, 'width of the blade'),
  ],
  output: {
    quantity: 'length',
    meaning: 'overhang to set',
    parts: { longest: 'length', widths: 'ratio' },
  },
  formula: 'overhang = (D − bore) ÷ 2 + 2 mm, not more than 8 × the width of the blade',
  source: PRACTICE,
  cautions,
  work: (values) => {
    const diameter = numberOf(values, 'diameter');
    const bore = numberOf(values, 'boreDiameter');
    const width = numberOf(values, 'bladeWidth');
    if (bore >= diameter) {
      return fault(
        worded`A bore of ${show(bore)} mm leaves nothing of ${show(diameter)} mm bar; give a smaller bore.`,
      );
    }
    const value = (diameter - bore) / 2 + 2;
    const longest = LONGEST_IN_WIDTHS * width;
    if (value > longest) {
      return fault(
        worded`The cut needs ${show(value)} mm of blade and a ${show(width)} mm blade may stick out ${show(longest)} mm; take a wider blade, or part from both sides or saw.`,
      );
    }
    return {
      ok: true,
      value,
      working: worded`(${show(diameter)} − ${show(bore)}) ÷ 2 + 2 = ${show(value)} mm; allowed 8 × ${show(width)} = ${show(longest)} mm`,
      parts: {
        longest: lengthPart(longest, 'longest overhang of this blade'),
        widths: part(value / width, 'ratio', 'overhang in blade widths'),
      },
    };
  },
};

export const barOutRule: Rule = {
  name: 'bar-out',
  title: 'How far the bar stands out of the chuck for parting off',
  topic: 'parting',
  inputs: [
    aLength('length', 500, 'finished length of the part'),
    aLength('bladeWidth', 12, 'width of the blade'),
    aLength('diameter', 500, 'smallest diameter of that length'),
    aLength('barDiameter', 500, 'diameter of the bar', { optional: true }),
    aNumber('facing', 'length', [0, 50], 'metal to face off first', { default: 1 }),
    aLength('gap', 50, 'gap between blade and jaws', { default: 5 }),
  ],
  output: {
    quantity: 'length',
    meaning: 'how far the bar stands out',
    parts: { travel: 'length', longest: 'length' },
  },
  formula: 'out = facing + length + blade + gap, not more than 3 D; travel = length + blade',
  source: `sum of what must find room; gap, facing and 3 D: ${PRACTICE}`,
  cautions,
  work: (values) => {
    const [length, width] = [numberOf(values, 'length'), numberOf(values, 'bladeWidth')];
    const [facing, gap] = [numberOf(values, 'facing'), numberOf(values, 'gap')];
    const diameter = numberOf(values, 'diameter');
    const bar = numberIf(values, 'barDiameter') ?? diameter;
    if (bar < diameter - 1e-9) {
      return fault(
        worded`Bar of ${show(bar)} mm cannot be turned to ${show(diameter)} mm; take thicker bar.`,
      );
    }
    const travel = length + width;
    const value = facing + travel + gap;
    const longest = CHUCK_ALONE * diameter;
    if (value > longest + 1e-9) {
      return fault(
        worded`The bar would stand ${show(value)} mm out, and the chuck alone holds ${show(longest)} mm of ${show(diameter)} mm; part off a shorter piece, or take thicker bar.`,
      );
    }
    return {
      ok: true,
      value,
      working: worded`${show(facing)} + ${show(length)} + ${show(width)} + ${show(gap)} = ${show(value)} mm; allowed 3 × ${show(diameter)} = ${show(longest)} mm`,
      parts: {
        travel: lengthPart(travel, 'way of the blade from the end face to its place'),
        longest: lengthPart(longest, 'longest in the chuck alone'),
      },
    };
  },
};
