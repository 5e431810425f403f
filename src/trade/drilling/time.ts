/** Drilling time and metal removed. */

import { worded } from '../../texts/index.ts';
import { aChoice, aNumber } from '../inputs.ts';
import { lengthPart } from '../part.ts';
import type { Rule } from '../rule.ts';
import { show } from '../show.ts';
import { GROOVER } from '../sources.ts';
import { feedInput } from '../turning/feed.ts';
import { spindleInput } from '../turning/spindle-speed.ts';
import { numberOf, wordOf } from '../values.ts';
import { depthInput } from './deep.ts';
import { drillDiameterInput, pointAngleInput, pointLength } from './point.ts';

export const drillingTimeRule: Rule = {
  name: 'drilling-time',
  title: 'Time to drill a hole',
  topic: 'drilling',
  inputs: [
    drillDiameterInput,
    { ...depthInput, meaning: 'full-diameter depth, or thickness to go through' },
    feedInput,
    spindleInput,
    pointAngleInput,
    aNumber('approach', 'length', [0, 100], 'travel before the tip touches', { default: 0 }),
    aChoice('point', ['counted', 'left-out'], 'whether the point is counted in the travel', {
      default: 'counted',
    }),
  ],
  output: { quantity: 'time', meaning: 'cutting time', parts: { travel: 'length' } },
  formula: 't = (depth + point + approach) ÷ (f n)',
  source: `${GROOVER}; older editions leave the point out of blind holes (from memory: Groover 3e)`,
  cautions: ['Time to come out and clear the chips is not in it.'],
  work: (values) => {
    const counted = wordOf(values, 'point') === 'counted';
    const point = pointLength(numberOf(values, 'diameter'), numberOf(values, 'pointAngle'));
    const depth = numberOf(values, 'depth');
    const approach = numberOf(values, 'approach');
    const travel = depth + approach + (counted ? point : 0);
    const feed = numberOf(values, 'feedPerRev');
    const spindle = numberOf(values, 'spindleSpeed');
    const value = travel / (feed * spindle);
    const pointText = counted ? worded` + ${show(point, 4)}` : '';
    return {
      ok: true,
      value,
      working: worded`(${show(depth + approach)}${pointText}) mm ÷ (${show(feed)} × ${show(spindle)}) = ${show(value, 4)} min`,
      parts: { travel: lengthPart(travel, 'travel of the tip') },
    };
  },
};

export const drillRemovalRule: Rule = {
  name: 'drill-removal',
  title: 'Metal removed in a minute by a drill',
  topic: 'drilling',
  inputs: [drillDiameterInput, feedInput, spindleInput],
  output: { quantity: 'volumeRate', meaning: 'metal removed in a minute' },
  formula: 'Q = π D² ÷ 4 × f n',
  source: GROOVER,
  cautions: [],
  work: (values) => {
    const diameter = numberOf(values, 'diameter');
    const feed = numberOf(values, 'feedPerRev');
    const spindle = numberOf(values, 'spindleSpeed');
    const value = (Math.PI * diameter ** 2 * feed * spindle) / 4;
    return {
      ok: true,
      value,
      working: worded`π × ${show(diameter)}² ÷ 4 × ${show(feed)} × ${show(spindle)} = ${show(value)} mm³/min`,
    };
  },
};
