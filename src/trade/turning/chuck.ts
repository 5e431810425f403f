/** What speed does to a chuck: its rim and its grip. */

import { worded } from '../../texts/index.ts';
import { aChoice, aLength } from '../inputs.ts';
import { part } from '../part.ts';
import type { Rule } from '../rule.ts';
import { show } from '../show.ts';
import { PRACTICE } from '../sources.ts';
import { fault, numberOf, wordOf } from '../values.ts';
import { spindleInput } from './spindle-speed.ts';

const topic = 'speeds and feeds';
/** Rim speed above which a cast-iron chuck or faceplate is not used, m/s. */
const CAST_IRON_RIM = 20;
/** Share of the standstill grip that is lost at the reference speed. */
const LOST_AT_REFERENCE = 2 / 3;

const cautions = [
  'The speed marked on the chuck comes first; without a mark ask, do not guess.',
  'Jaws must not stand out beyond the body more than its maker allows.',
];

export const chuckRimRule: Rule = {
  name: 'chuck-rim',
  title: "Speed of a chuck's rim",
  topic,
  inputs: [
    aLength('diameter', 2000, 'diameter of the chuck or faceplate'),
    spindleInput,
    aChoice('body', ['steel', 'cast-iron'], 'what its body is made of', { default: 'cast-iron' }),
  ],
  output: { quantity: 'wheelSpeed', meaning: 'rim speed', parts: { fastest: 'spindleSpeed' } },
  formula: 'v = π D n ÷ 60 000; a cast-iron body not above 20 m/s',
  source: `geometry; 20 m/s: ${PRACTICE}`,
  cautions,
  work: (values) => {
    const diameter = numberOf(values, 'diameter');
    const spindle = numberOf(values, 'spindleSpeed');
    const value = (Math.PI * diameter * spindle) / 60_000;
    const most = (60_000 * CAST_IRON_RIM) / (Math.PI * diameter);
    if (wordOf(values, 'body') === 'cast-iron' && value > CAST_IRON_RIM) {
      return fault(
        worded`The rim would run at ${show(value, 4)} m/s; a cast-iron body may not pass ${CAST_IRON_RIM} m/s, ${show(most, 4)} rev/min. Go slower, and never above its mark.`,
      );
    }
    return {
      ok: true,
      value,
      working: worded`π × ${show(diameter)} × ${show(spindle)} ÷ 60 000 = ${show(value, 4)} m/s`,
      parts: { fastest: part(most, 'spindleSpeed', 'speed at which a rim runs at 20 m/s') },
    };
  },
};

export const chuckGripRule: Rule = {
  name: 'chuck-grip',
  title: 'Grip that a chuck keeps at speed',
  topic,
  inputs: [
    spindleInput,
    { ...spindleInput, name: 'chuckLimit', meaning: 'speed marked on the chuck' },
  ],
  output: { quantity: 'percent', meaning: 'grip left of that at standstill, at least' },
  formula: 'grip = 100 % − 66.7 % × (n ÷ marked n)², a third left at the mark',
  source: 'EN 1550, DIN 6386 and VDI 3106, as lathe and chuck manuals quote them (titles not kept)',
  cautions: [...cautions, 'Clean, oiled jaws and full tightening are taken for granted here.'],
  work: (values) => {
    const spindle = numberOf(values, 'spindleSpeed');
    const mark = numberOf(values, 'chuckLimit');
    if (spindle > mark) {
      return fault(
        worded`${show(spindle)} rev/min is above the chuck's mark of ${show(mark)}; go no faster than the mark.`,
      );
    }
    const value = 100 * (1 - LOST_AT_REFERENCE * (spindle / mark) ** 2);
    const working = worded`100 − 66.7 × (${show(spindle)} ÷ ${show(mark)})² = ${show(value, 3)} %`;
    return { ok: true, value, working };
  },
};
