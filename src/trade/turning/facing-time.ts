/** Time to face, at one spindle speed or at one surface speed. */

import { worded } from '../../texts/index.ts';
import { aLength, aNumber } from '../inputs.ts';
import { part } from '../part.ts';
import type { Rule } from '../rule.ts';
import { show } from '../show.ts';
import { GROOVER } from '../sources.ts';
import { fault, numberOf } from '../values.ts';
import { feedInput } from './feed.ts';
import { spindleInput, surfaceSpeed, surfaceSpeedInput } from './spindle-speed.ts';
import { TIME_TOPIC } from './time.ts';

const outerInput = aLength('outerDiameter', 3000, 'diameter where the cut starts');
const innerInput = aNumber('innerDiameter', 'length', [0, 3000], 'diameter where it ends', {
  default: 0,
});

export const facingTimeRule: Rule = {
  name: 'facing-time',
  title: 'Time to face at one spindle speed',
  topic: TIME_TOPIC,
  inputs: [outerInput, innerInput, feedInput, spindleInput],
  output: {
    quantity: 'time',
    meaning: 'time of one facing cut',
    parts: { speedAtStart: 'surfaceSpeed', speedAtEnd: 'surfaceSpeed' },
  },
  formula: 't = (D outer − D inner) ÷ (2 f n)',
  source: `${GROOVER}; some pages print this formula under a constant-surface-speed heading`,
  cautions: [
    'At one spindle speed the surface speed falls with the diameter; the middle is cut slowly.',
    'A machine that keeps the surface speed constant runs up towards its top speed at the centre: cap it.',
  ],
  work: (values) => {
    const outer = numberOf(values, 'outerDiameter');
    const inner = numberOf(values, 'innerDiameter');
    if (inner >= outer) {
      return fault(
        worded`The cut ends at ${show(inner)} mm and starts at ${show(outer)} mm; facing goes inwards, so give a smaller inner diameter.`,
      );
    }
    const feed = numberOf(values, 'feedPerRev');
    const spindle = numberOf(values, 'spindleSpeed');
    const value = (outer - inner) / (2 * feed * spindle);
    const [start, end] = [surfaceSpeed(spindle, outer), surfaceSpeed(spindle, inner)];
    return {
      ok: true,
      value,
      working: worded`(${show(outer)} − ${show(inner)}) mm ÷ (2 × ${show(feed)} × ${show(spindle)}) = ${show(value, 4)} min; surface speed from ${show(start, 4)} to ${show(end, 4)} m/min`,
      parts: {
        speedAtStart: part(start, 'surfaceSpeed', 'surface speed at the outer diameter'),
        speedAtEnd: part(end, 'surfaceSpeed', 'surface speed at the inner diameter'),
      },
    };
  },
};

export const constantFacingTimeRule: Rule = {
  name: 'facing-time-constant-speed',
  title: 'Time to face at constant surface speed',
  topic: TIME_TOPIC,
  inputs: [outerInput, innerInput, feedInput, surfaceSpeedInput],
  output: { quantity: 'time', meaning: 'time of one facing cut, before the speed is capped' },
  formula: 't = π (Do² − Di²) ÷ (4000 v f)',
  source: GROOVER,
  cautions: [
    'Few manual lathes do this. The spindle speeds up towards the centre: cap it at the lowest mark.',
  ],
  work: (values) => {
    const outer = numberOf(values, 'outerDiameter');
    const inner = numberOf(values, 'innerDiameter');
    if (inner >= outer) {
      return fault(
        worded`The cut ends at ${show(inner)} mm and starts at ${show(outer)} mm; give a smaller inner diameter.`,
      );
    }
    const feed = numberOf(values, 'feedPerRev');
    const speed = numberOf(values, 'surfaceSpeed');
    const value = (Math.PI * (outer ** 2 - inner ** 2)) / (4000 * speed * feed);
    return {
      ok: true,
      value,
      working: worded`π × (${show(outer)}² − ${show(inner)}²) ÷ (4000 × ${show(speed)} × ${show(feed)}) = ${show(value, 4)} min`,
    };
  },
};
