/** Spindle speed out of surface speed and diameter, and back. */

import { type Worded, worded } from '../../texts/index.ts';
import { aLength, aNumber } from '../inputs.ts';
import type { Rule } from '../rule.ts';
import { show } from '../show.ts';
import { GROOVER } from '../sources.ts';
import { numberOf } from '../values.ts';

/** Rev/min for a surface speed in m/min on a diameter in mm. */
export function spindleSpeed(surfaceSpeed: number, diameter: number): number {
  return (1000 * surfaceSpeed) / (Math.PI * diameter);
}

/** Surface speed in m/min of a diameter in mm at a spindle speed in rev/min. */
export function surfaceSpeed(spindle: number, diameter: number): number {
  return (Math.PI * diameter * spindle) / 1000;
}

/** "1000 × 28 ÷ (π × 25) = 356.5 rev/min" */
export function spindleWorking(speed: number, diameter: number): Worded {
  const ideal = show(spindleSpeed(speed, diameter), 4);
  return worded`1000 × ${show(speed)} m/min ÷ (π × ${show(diameter)} mm) = ${ideal} rev/min`;
}

export const surfaceSpeedInput = aNumber(
  'surfaceSpeed',
  'surfaceSpeed',
  [0, 3000],
  'speed of the edge over the work',
  { aboveMin: true },
);

export const diameterInput = aLength(
  'diameter',
  3000,
  'diameter that is cut: of the work when turning, of the tool when drilling or milling',
);

export const spindleInput = aNumber('spindleSpeed', 'spindleSpeed', [0, 60_000], 'spindle speed', {
  aboveMin: true,
});

export const spindleSpeedRule: Rule = {
  name: 'spindle-speed',
  title: 'Spindle speed for a surface speed',
  topic: 'speeds and feeds',
  inputs: [surfaceSpeedInput, diameterInput],
  output: { quantity: 'spindleSpeed', meaning: 'ideal spindle speed, before any limit' },
  formula: 'n = 1000 v ÷ (π D)',
  source: `${GROOVER}; Machine-tool speeds and feeds hand-out`,
  cautions: [
    "Set the next lower speed on the machine's card.",
    'The lowest of the marks on chuck, card and work comes first.',
  ],
  work: (values) => {
    const speed = numberOf(values, 'surfaceSpeed');
    const diameter = numberOf(values, 'diameter');
    const value = spindleSpeed(speed, diameter);
    return { ok: true, value, working: spindleWorking(speed, diameter) };
  },
};

export const surfaceSpeedRule: Rule = {
  name: 'surface-speed',
  title: 'Surface speed at a spindle speed',
  topic: 'speeds and feeds',
  inputs: [spindleInput, diameterInput],
  output: { quantity: 'surfaceSpeed', meaning: 'speed of the edge over the work' },
  formula: 'v = π D n ÷ 1000',
  source: GROOVER,
  cautions: ['Take the largest diameter under the tool.'],
  work: (values) => {
    const spindle = numberOf(values, 'spindleSpeed');
    const diameter = numberOf(values, 'diameter');
    const value = surfaceSpeed(spindle, diameter);
    const working = worded`π × ${show(diameter)} mm × ${show(spindle)} rev/min ÷ 1000 = ${show(value, 4)} m/min`;
    return { ok: true, value, working };
  },
};
