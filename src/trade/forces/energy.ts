/** Power out of metal removed and the energy each mm³ takes. */

import { worded } from '../../texts/index.ts';
import { aNumber } from '../inputs.ts';
import { part } from '../part.ts';
import type { Rule } from '../rule.ts';
import { show } from '../show.ts';
import { CARVILL } from '../sources.ts';
import { spindleInput } from '../turning/spindle-speed.ts';
import { numberOf } from '../values.ts';
import { FORCE_TOPIC, forceCautions } from './kienzle.ts';

export const removalPowerRule: Rule = {
  name: 'removal-power',
  title: 'Power and torque from the metal removed',
  topic: FORCE_TOPIC,
  inputs: [
    aNumber('removal', 'volumeRate', [0, 1e7], 'metal removed in a minute', { aboveMin: true }),
    aNumber('energy', 'ratio', [0.1, 20], 'energy each mm³ takes, W·s/mm³'),
    spindleInput,
  ],
  output: { quantity: 'power', meaning: 'power at the spindle', parts: { torque: 'torque' } },
  formula: 'P = Q u ÷ 60 W; M = 60 P ÷ (2 π n)',
  source: `from memory: Kalpakjian & Schmid; milling constants: ${CARVILL}`,
  cautions: forceCautions,
  work: (values) => {
    const removal = numberOf(values, 'removal');
    const energy = numberOf(values, 'energy');
    const spindle = numberOf(values, 'spindleSpeed');
    const watts = (removal * energy) / 60;
    const torque = (60 * watts) / (2 * Math.PI * spindle);
    return {
      ok: true,
      value: watts / 1000,
      working: worded`${show(removal)} mm³/min × ${show(energy)} ÷ 60 = ${show(watts, 4)} W; × 60 ÷ (2π × ${show(spindle)}) = ${show(torque, 3)} Nm`,
      parts: { torque: part(torque, 'torque', 'torque at the spindle') },
    };
  },
};
