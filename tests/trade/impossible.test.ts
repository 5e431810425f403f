/** What cannot be is refused with what is impossible, why, and the next move. */

import { describe, expect, it } from 'vitest';
import type { RuleValues } from '../../src/trade/index.ts';
import { answerOf, faultOf } from './asking.ts';

const cut = { material: 'medium-carbon-steel', feedPerRev: 0.3, depth: 3, surfaceSpeed: 120 };

const impossible: readonly (readonly [name: string, values: RuleValues, says: string])[] = [
  [
    'spindle-speed',
    { surfaceSpeed: 28, diameter: 0 },
    'diameter came as 0 mm, which is not possible here',
  ],
  ['spindle-speed', { surfaceSpeed: 28 }, 'diameter is missing; give'],
  ['spindle-speed', { surfaceSpeed: 28, diamter: 20 }, 'Did you mean "diameter"?'],
  [
    'cutting-speed',
    { material: 'stainles-304', operation: 'turn' },
    'Did you mean "stainless-304"?',
  ],
  ['cutting-speed', { material: 'copper', operation: 'tap', tool: 'carbide' }, 'ask with tool hss'],
  ['cutting-power', { ...cut, motor: 1.5 }, 'take a depth of at most'],
  ['cutting-power', { ...cut, kc: 1500 }, 'Give both kc and mc'],
  ['cutting-power', { ...cut, material: 'nylon' }, 'No table here gives a cutting force for nylon'],
  ['cutting-force', { feedPerRev: 0.3, depth: 3 }, 'Say what is cut'],
  ['parting-blade', { diameter: 60, bladeWidth: 3 }, 'take a wider blade'],
  ['parting-blade', { diameter: 60, boreDiameter: 60, bladeWidth: 3 }, 'give a smaller bore'],
  ['bar-out', { length: 60, bladeWidth: 3, diameter: 20 }, 'part off a shorter piece'],
  [
    'bar-out',
    { length: 4, bladeWidth: 3, diameter: 20, barDiameter: 18 },
    'Bar of 18 mm cannot be turned to 20 mm; take thicker bar.',
  ],
  [
    'facing-time',
    { outerDiameter: 20, innerDiameter: 30, feedPerRev: 0.1, spindleSpeed: 300 },
    'facing goes inwards',
  ],
  [
    'turning-removal',
    { surfaceSpeed: 30, feedPerRev: 0.1, depth: 8, diameter: 10 },
    'cut less deep',
  ],
  [
    'chuck-rim',
    { diameter: 250, spindleSpeed: 2000 },
    'a cast-iron body may not pass 20 m/s, 1528 rev/min',
  ],
  ['chuck-grip', { spindleSpeed: 2100, chuckLimit: 2000 }, 'go no faster than the mark'],
  ['boring-bar-overhang', { diameter: 16, depth: 70 }, 'take a thicker bar or carbide'],
  [
    'bend-between-centres',
    { force: 10, length: 50, at: 60, diameter: 10, modulus: 200_000 },
    'beyond the free length',
  ],
  ['bend-in-chuck', { force: 10, length: 50, diameter: 10 }, 'Say what the bar is made of'],
  ['roughness-peak', { feedPerRev: 1, noseRadius: 0.4 }, 'use a larger nose'],
  ['roughness-grade', { roughness: 60 }, 'roughness came as 60 um'],
  ['countersink-depth', { topDiameter: 5, holeDiameter: 6 }, 'is not smaller than'],
  ['ream-drill', { diameter: 0.1 }, 'leaves no hole to drill'],
  ['peck-plan', { diameter: 1, depth: 900, material: 'copper' }, 'more than 200 pecks'],
  ['thread-percent', { thread: 'M6', hole: 7 }, 'nothing is left to cut'],
  ['thermal-growth', { length: 10, temperature: 30 }, 'Say what the work is made of'],
  ['centre-drill', { workDiameter: 1 }, 'too thin for the smallest centre drill'],
];

describe('the impossible', () => {
  it.each(impossible)('%s with %j is refused: %s', (name, values, says) => {
    expect(faultOf(name, values)).toContain(says);
  });

  it('is a refusal also when a sum leaves the numbers', () => {
    const values = { removal: 1e-5, energy: 20, spindleSpeed: 1e-5 };
    expect(answerOf('removal-power', values).ok).toBe(true);
    const far = { feedPerRev: 0.5, spindleSpeed: 1e-7, length: 10 };
    expect(answerOf('turning-time', far)).toMatchObject({ ok: false });
  });
});
