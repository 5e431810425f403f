/** Morse tapers. */

import { worded } from '../../texts/index.ts';
import { aChoice } from '../inputs.ts';
import { lengthPart } from '../part.ts';
import type { Rule, RuleValues, Worked } from '../rule.ts';
import { fault, wordOf } from '../values.ts';
import { halfAngle, taperPartQuantities, taperParts, taperWords } from './taper.ts';

const INCH = 25.4;

/**
 * Number: inches a foot, large end (gauge line) and small end of the plug in inches. Source: Morse
 * taper shanks table and Dimensions of standard tapers, after Machinery's Handbook; ISO 296 ratios
 * agree (from memory).
 */
const morseTapers: Readonly<Record<string, readonly [number, number, number]>> = {
  '0': [0.6246, 0.3561, 0.252],
  '1': [0.59858, 0.475, 0.369],
  '2': [0.59941, 0.7, 0.572],
  '3': [0.60235, 0.938, 0.778],
  '4': [0.62326, 1.231, 1.02],
  '5': [0.63151, 1.748, 1.475],
  '6': [0.62565, 2.494, 2.116],
};

function work(values: RuleValues): Worked {
  const number = wordOf(values, 'number');
  const row = morseTapers[number];
  if (row === undefined)
    return fault(worded`There is no Morse taper ${number} in the table; it has 0 to 6.`);
  const [perFoot, large, small] = row;
  const ratio = perFoot / 12;
  return {
    ok: true,
    value: halfAngle(ratio),
    working: worded`Morse ${number}: ${perFoot} in a foot ÷ 24: ${taperWords(ratio)}; ${large} in at the gauge line, ${small} in at the small end`,
    parts: {
      ...taperParts(ratio),
      large: lengthPart(large * INCH, 'diameter at the large end, gauge line'),
      small: lengthPart(small * INCH, 'diameter at the small end of the plug'),
    },
  };
}

export const morseTaper: Rule = {
  name: 'morse-taper',
  title: 'Morse taper',
  topic: 'tapers',
  inputs: [
    aChoice('number', Object.keys(morseTapers), 'number of the taper', {
      said: {
        '0': ['zero', 'nought'],
        '1': ['one'],
        '2': ['two'],
        '3': ['three'],
        '4': ['four'],
        '5': ['five'],
        '6': ['six'],
      },
    }),
  ],
  output: {
    quantity: 'angle',
    meaning: 'half angle: compound from the lathe axis',
    parts: { ...taperPartQuantities, large: 'length', small: 'length' },
  },
  formula: 'tan(α/2) = inches a foot ÷ 24',
  source: "Morse taper shanks table; Dimensions of standard tapers (after Machinery's Handbook)",
  cautions: [
    'Wipe socket and shank before they meet, and knock shanks out with the drift, never with a hammer on the machine.',
  ],
  work,
};
