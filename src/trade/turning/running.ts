/** "I am running four hundred": what that does, and whether it may be. */

import { worded } from '../../texts/index.ts';
import { part } from '../part.ts';
import type { Rule } from '../rule.ts';
import { show } from '../show.ts';
import { PRACTICE } from '../sources.ts';
import { fault, numberIf, numberOf } from '../values.ts';
import { cardInputs, LIMIT_NAMES } from './card-speed.ts';
import {
  diameterInput,
  spindleInput,
  spindleSpeed,
  surfaceSpeed,
  surfaceSpeedInput,
} from './spindle-speed.ts';

/** Shares of the wanted speed, in percent, outside which a speed is called slow or fast. */
const SLOW = 60;
const FAST = 120;

function wordFor(share: number): string {
  if (share < SLOW) return 'slow';
  return share > FAST ? 'fast' : 'good';
}

export const runningSpeedRule: Rule = {
  name: 'running-speed',
  title: 'What a running spindle speed means for the edge',
  topic: 'speeds and feeds',
  inputs: [
    { ...spindleInput, meaning: 'speed that runs' },
    diameterInput,
    { ...surfaceSpeedInput, meaning: 'surface speed that is wanted' },
    cardInputs[1],
    cardInputs[2],
    cardInputs[3],
  ],
  output: {
    quantity: 'surfaceSpeed',
    meaning: 'surface speed that results; the word is slow, good or fast',
    parts: { share: 'percent', ideal: 'spindleSpeed' },
  },
  formula: 'v = π D n ÷ 1000; slow below 60 % of the wanted speed, fast above 120 %',
  source: `geometry; 60 and 120 %: ${PRACTICE}`,
  cautions: ['Stop the spindle before you change belts or gears.'],
  work: (values) => {
    const spindle = numberOf(values, 'spindleSpeed');
    for (const [input, name] of LIMIT_NAMES) {
      const limit = numberIf(values, input);
      if (limit !== undefined && spindle > limit) {
        return fault(
          worded`${show(spindle)} rev/min is above ${name}, ${show(limit)}; stop and set a lower speed.`,
        );
      }
    }
    const diameter = numberOf(values, 'diameter');
    const wanted = numberOf(values, 'surfaceSpeed');
    const value = surfaceSpeed(spindle, diameter);
    const share = (value / wanted) * 100;
    return {
      ok: true,
      value,
      word: wordFor(share),
      working: worded`π × ${show(diameter)} mm × ${show(spindle)} rev/min ÷ 1000 = ${show(value, 3)} m/min, ${show(share, 3)} % of ${show(wanted)}: ${wordFor(share)}`,
      parts: {
        share: part(share, 'percent', 'share of the wanted surface speed'),
        ideal: part(spindleSpeed(wanted, diameter), 'spindleSpeed', 'speed the edge wants'),
      },
    };
  },
};
