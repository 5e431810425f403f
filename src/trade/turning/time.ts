/** Cutting times and how much metal a minute removes. */

import { worded } from '../../texts/index.ts';
import { aCount, aLength, aNumber } from '../inputs.ts';
import { part } from '../part.ts';
import type { Rule } from '../rule.ts';
import { show } from '../show.ts';
import { GROOVER } from '../sources.ts';
import { fault, numberIf, numberOf } from '../values.ts';
import { feedInput } from './feed.ts';
import { diameterInput, spindleInput, surfaceSpeedInput } from './spindle-speed.ts';

export const TIME_TOPIC = 'cutting time';
const passesInput = aCount('passes', [1, 10_000], 'cuts of this length', { default: 1 });
const lengthInput = aLength('length', 20_000, 'length that is cut');
const runInput = aNumber('approach', 'length', [0, 500], 'approach and over-run of each cut', {
  default: 0,
});
const timeCautions = ['Cutting time only: setting, measuring and sharpening come on top.'];

export const turningTimeRule: Rule = {
  name: 'turning-time',
  title: 'Time to turn a length',
  topic: TIME_TOPIC,
  inputs: [lengthInput, feedInput, spindleInput, runInput, passesInput],
  output: { quantity: 'time', meaning: 'time of all passes', parts: { eachPass: 'time' } },
  formula: 't = passes × (L + approach) ÷ (f n)',
  source: GROOVER,
  cautions: timeCautions,
  work: (values) => {
    const length = numberOf(values, 'length') + numberOf(values, 'approach');
    const feed = numberOf(values, 'feedPerRev');
    const spindle = numberOf(values, 'spindleSpeed');
    const passes = numberOf(values, 'passes');
    const eachPass = length / (feed * spindle);
    const value = eachPass * passes;
    return {
      ok: true,
      value,
      working: worded`${passes} × ${show(length)} mm ÷ (${show(feed)} mm/rev × ${show(spindle)} rev/min) = ${show(value, 4)} min`,
      parts: { eachPass: part(eachPass, 'time', 'time of one pass') },
    };
  },
};

export const cuttingTimeRule: Rule = {
  name: 'cutting-time',
  title: 'Time for a travel at a feed rate',
  topic: TIME_TOPIC,
  inputs: [
    lengthInput,
    aNumber('feedRate', 'feedRate', [0, 100_000], 'travel in a minute', { aboveMin: true }),
    runInput,
    passesInput,
  ],
  output: { quantity: 'time', meaning: 'time of all passes', parts: { eachPass: 'time' } },
  formula: 't = passes × (L + approach) ÷ vf',
  source: GROOVER,
  cautions: timeCautions,
  work: (values) => {
    const length = numberOf(values, 'length') + numberOf(values, 'approach');
    const rate = numberOf(values, 'feedRate');
    const passes = numberOf(values, 'passes');
    const value = (passes * length) / rate;
    return {
      ok: true,
      value,
      working: worded`${passes} × ${show(length)} mm ÷ ${show(rate)} mm/min = ${show(value, 4)} min`,
      parts: { eachPass: part(length / rate, 'time', 'time of one pass') },
    };
  },
};

export const speedForTimeRule: Rule = {
  name: 'surface-speed-for-time',
  title: 'Surface speed that finishes a cut in a time',
  topic: TIME_TOPIC,
  inputs: [
    lengthInput,
    diameterInput,
    feedInput,
    aNumber('time', 'time', [0, 10_000], 'time there is', { aboveMin: true }),
  ],
  output: { quantity: 'surfaceSpeed', meaning: 'surface speed that is needed' },
  formula: 'v = π D L ÷ (1000 f t)',
  source: 'from memory: Groover 4e, problem 22.2',
  cautions: ['Check it against the cutting speed for the material before you set it.'],
  work: (values) => {
    const length = numberOf(values, 'length');
    const diameter = numberOf(values, 'diameter');
    const feed = numberOf(values, 'feedPerRev');
    const time = numberOf(values, 'time');
    const value = (Math.PI * diameter * length) / (1000 * feed * time);
    return {
      ok: true,
      value,
      working: worded`π × ${show(diameter)} × ${show(length)} ÷ (1000 × ${show(feed)} × ${show(time)}) = ${show(value, 4)} m/min`,
    };
  },
};

export const turningRemovalRule: Rule = {
  name: 'turning-removal',
  title: 'Metal removed in a minute by turning',
  topic: TIME_TOPIC,
  inputs: [
    surfaceSpeedInput,
    feedInput,
    aLength('depth', 50, 'depth of cut a side'),
    { ...diameterInput, optional: true, meaning: 'diameter before the cut, for the mean rate' },
  ],
  output: { quantity: 'volumeRate', meaning: 'metal removed in a minute' },
  formula: 'Q = 1000 v f ap; with the diameter given, × (D − ap) ÷ D for the mean diameter',
  source: `${GROOVER} (speed at the outer diameter); Kalpakjian & Schmid (mean diameter)`,
  cautions: [],
  work: (values) => {
    const speed = numberOf(values, 'surfaceSpeed');
    const feed = numberOf(values, 'feedPerRev');
    const depth = numberOf(values, 'depth');
    const diameter = numberIf(values, 'diameter');
    if (diameter !== undefined && depth * 2 > diameter) {
      return fault(
        worded`A depth of ${show(depth)} mm a side is more than the radius of ${show(diameter)} mm work; cut less deep.`,
      );
    }
    const mean = diameter === undefined ? 1 : (diameter - depth) / diameter;
    const value = 1000 * speed * feed * depth * mean;
    const meanText = mean === 1 ? '' : worded` × ${show(mean)} for the mean diameter`;
    return {
      ok: true,
      value,
      working: worded`1000 × ${show(speed)} × ${show(feed)} × ${show(depth)}${meanText} = ${show(value)} mm³/min`,
    };
  },
};
