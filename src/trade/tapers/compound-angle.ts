/** The angle at which the compound slide turns a taper. */

import { type Worded, worded } from '../../texts/index.ts';
import { aLength, aNumber } from '../inputs.ts';
import type { Rule, RuleValues, Worked } from '../rule.ts';
import { show } from '../show.ts';
import { fault, numberIf, numberOf } from '../values.ts';
import { halfAngle, taperPartQuantities, taperParts, taperWords } from './taper.ts';

export const largeInput = aLength('large', 2000, 'diameter at the large end');
export const smallInput = aNumber('small', 'length', [0, 2000], 'diameter at the small end');

/** Why these two diameters are no taper, or undefined. */
export function taperFault(large: number, small: number): Worded | undefined {
  if (large > small) return undefined;
  return worded`The large end, ${show(large)} mm, is not larger than the small end, ${show(small)} mm; swap or check them.`;
}

const CAUTIONS = [
  'Lock the carriage; keep the compound well on its slide and clear of the chuck jaws through its whole travel.',
];

function work(values: RuleValues): Worked {
  const [large, small] = [numberOf(values, 'large'), numberOf(values, 'small')];
  const length = numberOf(values, 'length');
  const wrong = taperFault(large, small);
  if (wrong !== undefined) return fault(wrong);
  const ratio = (large - small) / length;
  return {
    ok: true,
    value: halfAngle(ratio),
    working: worded`(${show(large)} − ${show(small)}) ÷ ${show(length)} = ${show(ratio)}: ${taperWords(ratio)}`,
    parts: taperParts(ratio),
  };
}

const OUTPUT = {
  quantity: 'angle',
  meaning: 'half angle: compound from the lathe axis',
  parts: taperPartQuantities,
} as const;

export const compoundAngle: Rule = {
  name: 'compound-angle',
  title: 'Compound angle of a taper',
  topic: 'tapers',
  inputs: [largeInput, smallInput, aLength('length', 4000, 'length of the taper along the axis')],
  output: OUTPUT,
  formula: 'tan(α/2) = (D − d) ÷ (2 l); a protractor that is 0 square to the axis shows 90° − α/2',
  source: 'geometry; two ways to zero the compound: Jones, Turning and Boring',
  cautions: CAUTIONS,
  work,
};

type Named = { readonly ratio: number; readonly said: Worded };

function named(values: RuleValues): readonly Named[] {
  const [perFoot, oneIn] = [numberIf(values, 'perFoot'), numberIf(values, 'oneIn')];
  const included = numberIf(values, 'included');
  const foot = 12 * 25.4;
  return [
    ...(perFoot === undefined
      ? []
      : [{ ratio: perFoot / foot, said: worded`${show(perFoot)} mm in a foot of 304.8 mm` }]),
    ...(oneIn === undefined ? [] : [{ ratio: 1 / oneIn, said: worded`1 : ${show(oneIn)}` }]),
    ...(included === undefined
      ? []
      : [
          {
            ratio: 2 * Math.tan((included * Math.PI) / 360),
            said: worded`included angle ${show(included, 6)}°`,
          },
        ]),
  ];
}

function workNamed(values: RuleValues): Worked {
  const given = named(values);
  const [only] = given;
  if (only === undefined || given.length > 1) {
    return fault('Give the taper one way: perFoot, or oneIn, or included.');
  }
  return {
    ok: true,
    value: halfAngle(only.ratio),
    working: worded`${only.said}: ${taperWords(only.ratio)}`,
    parts: taperParts(only.ratio),
  };
}

export const taperFromName: Rule = {
  name: 'taper-angle',
  title: 'Angle of a named taper',
  topic: 'tapers',
  inputs: [
    aLength('perFoot', 600, 'change of diameter over one foot', { optional: true }),
    aNumber('oneIn', 'ratio', [0.3, 5000], 'x of a taper 1 : x', { optional: true }),
    aNumber('included', 'angle', [0, 150], 'included angle', { aboveMin: true, optional: true }),
  ],
  output: OUTPUT,
  formula: 'tan(α/2) = taper a foot ÷ 24 in = 1 ÷ (2 x)',
  source: 'geometry; Tapers per foot and corresponding angles (handbook table, 1 to 3 seconds low)',
  cautions: CAUTIONS,
  work: workNamed,
};
