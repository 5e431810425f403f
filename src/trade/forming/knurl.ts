/** Blank diameters on which a knurl closes into whole pitches. */

import { worded } from '../../texts/index.ts';
import { aChoice, aCount, aLength, aNumber } from '../inputs.ts';
import { lengthPart, part } from '../part.ts';
import type { Rule, RuleValues, Worked } from '../rule.ts';
import { show } from '../show.ts';
import { fault, numberOf, wordOf } from '../values.ts';

const INCH = 25.4;
const CAUTIONS = [
  'Knurl at a low speed with plenty of oil; keep fingers, rags and brushes away from the wheels.',
  'A long thin blank bends under the wheels: support it with a centre.',
];

/** Blank for so many teeth: N p ÷ π, the pitch taken round the work. Lengths in mm. */
export const blankFor = (teeth: number, pitch: number) => (teeth * pitch) / Math.PI;

function workPitch(values: RuleValues): Worked {
  const [normal, wanted] = [numberOf(values, 'pitch'), numberOf(values, 'diameter')];
  const helix = numberOf(values, 'helix');
  const pitch = normal / Math.cos((helix * Math.PI) / 180);
  const exact = (Math.PI * wanted) / pitch;
  const down = wordOf(values, 'choose') === 'smaller';
  const teeth = down ? Math.floor(exact + 1e-9) : Math.round(exact);
  if (teeth < 8) {
    return fault(
      worded`A ${show(normal)} mm pitch leaves only ${teeth} teeth round ${show(wanted)} mm; take a finer knurl.`,
    );
  }
  const blank = blankFor(teeth, pitch);
  const round =
    helix === 0 ? show(pitch) : worded`${show(normal)} ÷ cos ${show(helix)}° = ${show(pitch, 5)}`;
  return {
    ok: true,
    value: blank,
    working: worded`pitch ${round} mm; π × ${show(wanted)} ÷ ${show(pitch, 5)} = ${show(exact, 4)}, so ${teeth} teeth: ${teeth} × ${show(pitch, 5)} ÷ π = ${show(blank, 5)} mm`,
    parts: {
      teeth: part(teeth, 'count', 'teeth round the work'),
      smaller: lengthPart(blankFor(teeth - 1, pitch), 'blank with one tooth less'),
      larger: lengthPart(blankFor(teeth + 1, pitch), 'blank with one tooth more'),
    },
  };
}

export const knurlBlank: Rule = {
  name: 'knurl-blank',
  title: 'Blank for a knurl of this pitch',
  topic: 'forming',
  inputs: [
    aNumber('pitch', 'length', [0.2, 5], 'pitch of the knurl, square to its teeth'),
    aLength('diameter', 500, 'diameter wanted'),
    aNumber('helix', 'angle', [0, 60], 'angle of the teeth to the axis; 0 is straight', {
      default: 0,
    }),
    aChoice('choose', ['nearest', 'smaller'], 'nearest blank, or the next smaller one', {
      default: 'nearest',
    }),
  ],
  output: {
    quantity: 'length',
    meaning: 'blank diameter',
    parts: { teeth: 'count', smaller: 'length', larger: 'length' },
  },
  formula: 'D = N p ÷ π, N whole; for diagonal teeth p = normal pitch ÷ cos(helix)',
  source:
    'geometry; the knurled diameter grows by 0.3 to 0.5 of the pitch: common practice, no source',
  cautions: CAUTIONS,
  work: workPitch,
};

function workDiametral(values: RuleValues): Worked {
  const diametral = Number(wordOf(values, 'diametralPitch'));
  const wanted = numberOf(values, 'diameter');
  const exact = (wanted / INCH) * diametral;
  const teeth = Math.round(exact);
  if (teeth < 8)
    return fault(worded`${show(wanted)} mm is too small for ${diametral} DP; take a finer knurl.`);
  const blank = (teeth / diametral) * INCH;
  return {
    ok: true,
    value: blank,
    working: worded`${show(wanted / INCH, 4)} in × ${diametral} = ${show(exact, 4)}, so ${teeth} teeth: ${teeth} ÷ ${diametral} = ${show(teeth / diametral, 5)} in (${show(blank, 5)} mm)`,
    parts: { teeth: part(teeth, 'count', 'teeth round the work') },
  };
}

export const knurlDiametral: Rule = {
  name: 'knurl-diametral',
  title: 'Blank for a diametral-pitch knurl',
  topic: 'forming',
  inputs: [
    aLength('diameter', 500, 'diameter wanted'),
    aChoice('diametralPitch', ['64', '96', '128', '160'], 'diametral pitch; 96 is preferred', {
      default: '96',
    }),
  ],
  output: { quantity: 'length', meaning: 'blank diameter', parts: { teeth: 'count' } },
  formula:
    'D = N ÷ DP inches, N whole: steps of 1/64 in for 64 and 128 DP, 1/32 in for 96 and 160 DP are always whole',
  source: 'Diametral pitch knurling, after ANSI B94.6',
  cautions: CAUTIONS,
  work: workDiametral,
};

function workWheel(values: RuleValues): Worked {
  const [wheel, wheelTeeth] = [numberOf(values, 'wheel'), numberOf(values, 'wheelTeeth')];
  const [stock, correction] = [numberOf(values, 'stock'), numberOf(values, 'correction')];
  const exact = (stock / wheel) * wheelTeeth;
  const teeth = Math.floor(exact + 1e-9);
  if (teeth < 8)
    return fault(worded`The wheel is too coarse for ${show(stock)} mm stock; take a finer one.`);
  const blank = (teeth / wheelTeeth) * (wheel + correction);
  return {
    ok: true,
    value: blank,
    working: worded`${show(stock)} ÷ ${show(wheel)} × ${wheelTeeth} = ${show(exact, 4)}, so ${teeth} teeth: ${teeth} ÷ ${wheelTeeth} × (${show(wheel)} + ${show(correction)}) = ${show(blank, 5)} mm`,
    parts: {
      teeth: part(teeth, 'count', 'teeth round the work'),
      smaller: lengthPart(((teeth - 1) / wheelTeeth) * (wheel + correction), 'blank with one less'),
    },
  };
}

export const knurlFromWheel: Rule = {
  name: 'knurl-from-wheel',
  title: 'Blank from the wheel itself',
  topic: 'forming',
  inputs: [
    aLength('wheel', 100, 'diameter of the knurling wheel'),
    aCount('wheelTeeth', [10, 400], 'teeth of the wheel'),
    aLength('stock', 500, 'diameter of the stock'),
    aNumber('correction', 'length', [0, 2], 'maker’s correction to the wheel diameter', {
      default: 0,
    }),
  ],
  output: {
    quantity: 'length',
    meaning: 'blank diameter',
    parts: { teeth: 'count', smaller: 'length' },
  },
  formula:
    'teeth = stock ÷ wheel × wheel teeth, down to a whole; blank = teeth ÷ wheel teeth × (wheel + correction)',
  source: 'Bump knurling from the cross slide (die maker)',
  cautions: CAUTIONS,
  work: workWheel,
};
