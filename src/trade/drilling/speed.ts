/** Speed of a drill in a material, slower when the hole is deep. */

import { worded } from '../../texts/index.ts';
import { cuttingSpeed } from '../materials/cutting-speed.ts';
import { coolantInput, materialInput, questionOf, toolInput } from '../materials/inputs.ts';
import { materialNamed } from '../materials/named.ts';
import type { Rule, RuleValues } from '../rule.ts';
import { show } from '../show.ts';
import { DRILL_GUIDE } from '../sources.ts';
import { cardSpeed, looseCardInputs } from '../turning/card-speed.ts';
import { numberIf, numberOf, wordOf } from '../values.ts';
import { deepShare, depthInput } from './deep.ts';
import { drillDiameterInput } from './point.ts';

function shareFor(values: RuleValues, diameter: number): number {
  const depth = numberIf(values, 'depth');
  return depth === undefined ? 1 : deepShare(depth, diameter).speed;
}

export const drillSpeedRule: Rule = {
  name: 'drill-speed',
  title: 'Spindle speed for a drill',
  topic: 'drilling',
  inputs: [
    drillDiameterInput,
    materialInput,
    toolInput,
    coolantInput,
    { ...depthInput, optional: true },
    ...looseCardInputs,
  ],
  output: {
    quantity: 'spindleSpeed',
    meaning: 'speed to set',
    parts: { ideal: 'spindleSpeed', surfaceSpeed: 'surfaceSpeed' },
  },
  formula:
    'drilling speed of the material × share for a deep hole; 1000 v ÷ (π D); next lower on the card',
  source: `Materials table (a source in every row); deep holes: ${DRILL_GUIDE}`,
  cautions: ['Clamp the work. Take the key or drift out before you start.'],
  work: (values) => {
    const diameter = numberOf(values, 'diameter');
    const material = materialNamed(wordOf(values, 'material'));
    const speed = cuttingSpeed(material, questionOf(values, 'drill'));
    if (!speed.ok) return speed;
    const share = shareFor(values, diameter);
    const answer = cardSpeed(speed.value * share, diameter, values);
    if (!answer.ok) return answer;
    const deep = share === 1 ? '' : worded`; deep hole × ${show(share)}`;
    const source = speed.source === undefined ? {} : { source: speed.source };
    return { ...answer, ...source, working: worded`${speed.working}${deep}; ${answer.working}` };
  },
};
