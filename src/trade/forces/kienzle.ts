/** Kienzle's specific cutting force, and the power that follows. */

import { type Worded, worded } from '../../texts/index.ts';
import { aLength, aNumber } from '../inputs.ts';
import { materialInput } from '../materials/inputs.ts';
import type { SpecificForce } from '../materials/material.ts';
import { materialNamed } from '../materials/named.ts';
import type { NumberInput, Rule, RuleInput, RuleValues } from '../rule.ts';
import { show } from '../show.ts';
import { KIENZLE } from '../sources.ts';
import { numberIf, numberOf, wordIf } from '../values.ts';

export const FORCE_TOPIC = 'forces and power';

/** kc in N/mm² for a chip thickness in mm and a rake angle in degrees (1 % a degree). */
export function specificForce({ kc, mc }: SpecificForce, thickness: number, rake = 0): number {
  return kc * thickness ** -mc * (1 - rake / 100);
}

export const forceCautions = [
  'Right to about a fifth; a worn edge needs up to half more.',
  'A thin chip (below 0.05 mm) or a dull edge needs more than this says.',
];

/** What is cut, unless the shop gives its own constants. */
export const metalInput: RuleInput = { ...materialInput, optional: true };

export const ownForceInputs: readonly NumberInput[] = [
  aNumber('kc', 'stress', [50, 10_000], "kc1.1 of the shop's own material", { optional: true }),
  aNumber('mc', 'ratio', [0, 0.6], "mc of the shop's own material", { optional: true }),
];

/** Constants of the material, or the shop's own where both are given. */
export function constantsOf(
  values: RuleValues,
):
  | { readonly ok: true; readonly force: SpecificForce; readonly title: string }
  | { ok: false; fault: Worded } {
  const kc = numberIf(values, 'kc');
  const mc = numberIf(values, 'mc');
  if (kc !== undefined && mc !== undefined) return { ok: true, force: { kc, mc }, title: 'own' };
  if (kc !== undefined || mc !== undefined) {
    return { ok: false, fault: "Give both kc and mc of the shop's own material, or neither." };
  }
  const material = wordIf(values, 'material');
  if (material === undefined) {
    return { ok: false, fault: 'Say what is cut (material), or give kc and mc of your own.' };
  }
  const row = materialNamed(material);
  if (row.force !== undefined) return { ok: true, force: row.force, title: row.title };
  return {
    ok: false,
    fault: worded`No table here gives a cutting force for ${row.title}; give kc and mc, or ask about a metal.`,
  };
}

export const rakeInput = aNumber('rake', 'angle', [-20, 30], 'rake angle of the tool', {
  default: 0,
});

export const specificForceRule: Rule = {
  name: 'specific-force',
  title: 'Specific cutting force',
  topic: FORCE_TOPIC,
  inputs: [
    metalInput,
    aLength('chipThickness', 2.5, 'thickness of the chip'),
    rakeInput,
    ...ownForceInputs,
  ],
  output: { quantity: 'stress', meaning: 'force for each mm² of chip' },
  formula: 'kc = kc1.1 × h^−mc × (1 − rake ÷ 100)',
  source: `${KIENZLE}. Rake 1 % a degree (from memory: a tool maker's training handbook); German texts take 1.5 %`,
  cautions: forceCautions,
  work: (values) => {
    const constants = constantsOf(values);
    if (!constants.ok) return constants;
    const thickness = numberOf(values, 'chipThickness');
    const value = specificForce(constants.force, thickness, numberOf(values, 'rake'));
    const working = worded`${show(constants.force.kc)} × ${show(thickness)}^−${show(constants.force.mc)} = ${show(value)} N/mm²`;
    return { ok: true, value, working };
  },
};
