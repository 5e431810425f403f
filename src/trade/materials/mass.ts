/** How heavy a material and a bar of it are. */

import { worded } from '../../texts/index.ts';
import { aLength, aNumber } from '../inputs.ts';
import { part } from '../part.ts';
import type { Rule } from '../rule.ts';
import { show } from '../show.ts';
import { DENSITY } from '../sources.ts';
import { fault, numberOf, wordOf } from '../values.ts';
import { materialInput } from './inputs.ts';
import { materialNamed } from './named.ts';

const TOPIC = 'materials and tools';

export const densityRule: Rule = {
  name: 'material-density',
  title: 'Density of a material',
  topic: TOPIC,
  inputs: [materialInput],
  output: { quantity: 'density', meaning: 'mass of a cubic metre' },
  formula: 'table',
  source: `Materials table: ${DENSITY}`,
  cautions: ['A textbook value; castings are lighter where they are porous.'],
  work: (values) => {
    const row = materialNamed(wordOf(values, 'material'));
    const working = worded`${row.title}: ${row.density} kg/m³`;
    return { ok: true, value: row.density, working, source: row.sources.density };
  },
};

export const barMassRule: Rule = {
  name: 'bar-mass',
  title: 'Mass of a round bar or tube',
  topic: TOPIC,
  inputs: [
    materialInput,
    aLength('diameter', 3000, 'diameter of the bar'),
    aNumber('bore', 'length', [0, 3000], 'bore of a tube; 0 for solid bar', { default: 0 }),
    aLength('length', 20_000, 'length of the bar'),
  ],
  output: { quantity: 'mass', meaning: 'mass of the bar', parts: { perMetre: 'mass' } },
  formula: 'm = ρ π (D² − d²) L ÷ 4',
  source: `geometry; density: ${DENSITY}`,
  cautions: [
    'What one person may lift alone stands in local rules; lift work, chucks and vices with help or a hoist.',
    'Keep hands from under it, and put a board over the ways first.',
  ],
  work: (values) => {
    const row = materialNamed(wordOf(values, 'material'));
    const [diameter, bore] = [numberOf(values, 'diameter'), numberOf(values, 'bore')];
    if (bore >= diameter)
      return fault(worded`A bore of ${show(bore)} mm leaves nothing of ${show(diameter)} mm.`);
    const length = numberOf(values, 'length');
    // mm² × mm × kg/m³ is 1e-9 kg.
    const perMetre = (row.density * Math.PI * (diameter ** 2 - bore ** 2)) / 4 / 1e6;
    const value = (perMetre * length) / 1000;
    const hole = bore === 0 ? '' : worded` − ${show(bore)}²`;
    return {
      ok: true,
      value,
      working: worded`${row.title}: ${row.density} × π × (${show(diameter)}²${hole}) ÷ 4 = ${show(perMetre, 4)} kg a metre × ${show(length / 1000)} m = ${show(value, 4)} kg`,
      source: `geometry; density: ${row.sources.density}`,
      parts: { perMetre: part(perMetre, 'mass', 'mass of a metre of it') },
    };
  },
};
