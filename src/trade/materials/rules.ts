/** Questions to the materials table. */

import { worded } from '../../texts/index.ts';
import type { Rule, Worked } from '../rule.ts';
import { fault, wordOf } from '../values.ts';
import { cuttingSpeed } from './cutting-speed.ts';
import { coolantInput, materialInput, operationInput, questionOf, toolInput } from './inputs.ts';
import { barMassRule, densityRule } from './mass.ts';
import { materialNamed } from './named.ts';

const cuttingSpeedRule: Rule = {
  name: 'cutting-speed',
  title: 'Cutting speed by material, tool and operation',
  topic: 'materials and tools',
  inputs: [materialInput, toolInput, operationInput, coolantInput],
  output: { quantity: 'surfaceSpeed', meaning: 'starting speed of the edge over the work' },
  formula: "the table's starting speed × the operation's share × 0.75 when HSS runs dry",
  source:
    'Materials table: a source stands in every row and is named in the working. Bored, knurled, ' +
    'counterbored and dry shares: common practice, no source. Where tables differ (304 drilled ' +
    'at 9-12 or 15-17, aluminium at 60-90 or 107-122) the lower side is used.',
  cautions: [
    'A starting value for a manual machine: less for long, thin or loosely held work.',
    "The chuck's mark, the machine's card and the tool maker's limit come first.",
  ],
  work: (values) => {
    const operation = wordOf(values, 'operation');
    return cuttingSpeed(materialNamed(wordOf(values, 'material')), questionOf(values, operation));
  },
};

function specific(material: string, which: 'kc' | 'mc'): Worked {
  const row = materialNamed(material);
  if (row.force === undefined) {
    return fault(
      worded`The table has no cutting force for ${row.title}: VDI 3323 lists no plastics. Ask about a metal.`,
    );
  }
  const unit = which === 'kc' ? ' N/mm²' : '';
  const label = which === 'kc' ? 'kc1.1' : 'mc';
  const working = worded`${row.title}: ${label} = ${row.force[which]}${unit}`;
  return { ok: true, value: row.force[which], working, source: row.sources.force };
}

const propertyCautions = ['A textbook value; the bar in the hand may differ by a tenth.'];

const modulusRule: Rule = {
  name: 'material-stiffness',
  title: 'Modulus of elasticity of a material',
  topic: 'materials and tools',
  inputs: [materialInput],
  output: { quantity: 'stress', meaning: "Young's modulus" },
  formula: 'table',
  source: 'Materials table: Hibbeler-type appendix, low end where printed values differ',
  cautions: propertyCautions,
  work: (values) => {
    const row = materialNamed(wordOf(values, 'material'));
    const working = worded`${row.title}: E = ${row.modulus} N/mm²`;
    return { ok: true, value: row.modulus, working, source: row.sources.modulus };
  },
};

const expansionRule: Rule = {
  name: 'material-expansion',
  title: 'Thermal expansion of a material',
  topic: 'materials and tools',
  inputs: [materialInput],
  output: { quantity: 'expansion', meaning: 'growth in length for each kelvin' },
  formula: 'table',
  source: 'Materials table: thermal expansion charts; they differ by up to a tenth',
  cautions: propertyCautions,
  work: (values) => {
    const row = materialNamed(wordOf(values, 'material'));
    const working = worded`${row.title}: ${row.expansion} × 10⁻⁶ per K`;
    return { ok: true, value: row.expansion, working, source: row.sources.expansion };
  },
};

const forceConstantRule: Rule = {
  name: 'material-force',
  title: 'Cutting-force constant of a material (kc1.1)',
  topic: 'materials and tools',
  inputs: [materialInput],
  output: { quantity: 'stress', meaning: 'force on a chip 1 mm wide and 1 mm thick, rake 0°' },
  formula: 'table',
  source:
    'Material groups VDI 3323 / ISO 513; titanium by the 2017 edition (2110; 2022 prints 1245)',
  cautions: ['Good for power within a fifth; a worn tool needs up to half more.'],
  work: (values) => specific(wordOf(values, 'material'), 'kc'),
};

const forceExponentRule: Rule = {
  name: 'material-force-exponent',
  title: 'Cutting-force exponent of a material (mc)',
  topic: 'materials and tools',
  inputs: [materialInput],
  output: { quantity: 'ratio', meaning: 'how fast the force falls as the chip gets thicker' },
  formula: 'table',
  source: 'Material groups VDI 3323 / ISO 513, 2017 and 2022 editions',
  cautions: propertyCautions,
  work: (values) => specific(wordOf(values, 'material'), 'mc'),
};

const GROUP_MEANINGS = {
  P: 'steel',
  M: 'stainless steel, austenitic',
  K: 'cast iron',
  N: 'non-ferrous metal',
  S: 'heat-resistant alloy and titanium',
  H: 'hardened material',
  O: 'not a metal: outside ISO 513',
} as const;

const groupRule: Rule = {
  name: 'material-group',
  title: 'Cutting group of a material',
  topic: 'materials and tools',
  inputs: [materialInput],
  output: { quantity: 'count', meaning: 'number in VDI 3323; the word is the ISO 513 letter' },
  formula: 'table',
  source: 'Material groups VDI 3323 / ISO 513',
  cautions: [],
  work: (values) => {
    const row = materialNamed(wordOf(values, 'material'));
    const group =
      row.group === undefined ? 'no VDI 3323 group' : worded`VDI 3323 group ${row.group}`;
    const working = worded`${row.title}: ISO 513 ${row.iso} (${GROUP_MEANINGS[row.iso]}), ${group}`;
    return { ok: true, value: row.group ?? 0, word: row.iso, working };
  },
};

export const materialRules: readonly Rule[] = [
  cuttingSpeedRule,
  modulusRule,
  expansionRule,
  densityRule,
  barMassRule,
  forceConstantRule,
  forceExponentRule,
  groupRule,
];
