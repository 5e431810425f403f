/** Pairs that undo each other, sums that only go one way, and the same answer in mm and inches. */

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { answerRule, findRule, readAsked } from '../../src/trade/index.ts';
import { numberOf, partOf } from './asking.ts';

const size = fc.double({ min: 3, max: 500, noNaN: true });
const speed = fc.double({ min: 1, max: 500, noNaN: true });
const feed = fc.double({ min: 0.02, max: 1, noNaN: true });
const settings = { seed: 5 };

function close(a: number, b: number): void {
  expect(Math.abs(a - b)).toBeLessThanOrEqual(1e-9 * Math.max(1, Math.abs(a), Math.abs(b)));
}

describe('inverse pairs', () => {
  it('spindle speed and surface speed undo each other', () => {
    fc.assert(
      fc.property(size, speed, (diameter, surfaceSpeed) => {
        const spindleSpeed = numberOf('spindle-speed', { diameter, surfaceSpeed });
        close(numberOf('surface-speed', { diameter, spindleSpeed }), surfaceSpeed);
      }),
      settings,
    );
  });

  it('feed a minute and feed a turn undo each other', () => {
    fc.assert(
      fc.property(feed, speed, (feedPerRev, spindleSpeed) => {
        const feedRate = numberOf('feed-rate', { feedPerRev, spindleSpeed });
        close(numberOf('feed-per-rev', { feedRate, spindleSpeed }), feedPerRev);
      }),
      settings,
    );
  });

  it('roughness and its feed undo each other below the nose limit', () => {
    fc.assert(
      fc.property(fc.double({ min: 0.05, max: 3, noNaN: true }), (roughness) => {
        const noseRadius = 0.8;
        const feedPerRev = numberOf('feed-for-roughness', { roughness, noseRadius });
        close(numberOf('roughness-average', { feedPerRev, noseRadius }), roughness);
      }),
      settings,
    );
  });

  it('a wanted percent of thread comes back from its drill', () => {
    fc.assert(
      fc.property(fc.double({ min: 40, max: 95, noNaN: true }), (percent) => {
        const hole = numberOf('tap-drill', { thread: 'M12', percent });
        close(numberOf('thread-percent', { thread: 'M12', hole }), percent);
      }),
      settings,
    );
  });

  it('a size at 20 °C grows back to the reading of a gauge at 20 °C', () => {
    fc.assert(
      fc.property(size, fc.double({ min: 0, max: 60, noNaN: true }), (reading, temperature) => {
        const length = numberOf('size-at-20', { reading, temperature, material: 'copper' });
        const growth = numberOf('thermal-growth', { length, temperature, material: 'copper' });
        close(length + growth, reading);
      }),
      settings,
    );
  });

  it('the deepest cut the motor allows needs exactly the motor', () => {
    fc.assert(
      fc.property(feed, fc.double({ min: 0.2, max: 5, noNaN: true }), (feedPerRev, motor) => {
        const cut = { material: 'medium-carbon-steel', feedPerRev, surfaceSpeed: 80 };
        const depth = numberOf('deepest-cut', { ...cut, motor });
        fc.pre(depth < 50);
        close(partOf('cutting-power', 'atMotor', { ...cut, depth }), motor);
      }),
      settings,
    );
  });
});

describe('scaling', () => {
  // From memory: Shigley, table A-9: L³ and d⁴.
  it('twice the length bends eight times as much, twice the diameter a sixteenth', () => {
    fc.assert(
      fc.property(size, size, (length, diameter) => {
        const bar = { force: 100, length, diameter, modulus: 200_000 };
        const bend = numberOf('bend-in-chuck', bar);
        fc.pre(bend < 1e6);
        const ratio = (change: object) => numberOf('bend-in-chuck', { ...bar, ...change }) / bend;
        close(ratio({ length: 2 * length }), 8);
        close(ratio({ diameter: 2 * diameter }), 1 / 16);
      }),
      settings,
    );
  });

  it('a centre leaves 2.7 % of the bend, two centres 6.3 % (from memory: Shigley, table A-9)', () => {
    const bar = { force: 100, length: 200, diameter: 20, modulus: 200_000 };
    const alone = numberOf('bend-in-chuck', bar);
    expect((numberOf('bend-chuck-and-centre', bar) / alone) * 100).toBeCloseTo(2.7, 1);
    expect((numberOf('bend-between-centres', bar) / alone) * 100).toBeCloseTo(6.3, 1);
  });

  it('a tube bends more than the bar it was bored from', () => {
    fc.assert(
      fc.property(size, fc.double({ min: 0.05, max: 0.95, noNaN: true }), (diameter, share) => {
        const bar = { force: 10, length: 100, diameter, modulus: 200_000 };
        const solid = numberOf('bend-in-chuck', bar);
        return numberOf('bend-in-chuck', { ...bar, bore: diameter * share }) > solid;
      }),
      settings,
    );
  });

  it('half as fast again loses 2.25 times the grip (VDI 3106: grip falls with the square)', () => {
    const lost = (spindleSpeed: number) =>
      100 - numberOf('chuck-grip', { spindleSpeed, chuckLimit: 3000 });
    close(lost(1500) / lost(1000), 2.25);
  });

  it('a thicker chip always takes less force a mm²', () => {
    fc.assert(
      fc.property(feed, feed, (thin, thick) => {
        fc.pre(thin < thick * 0.999);
        const kc = (chipThickness: number) =>
          numberOf('specific-force', { chipThickness, material: 'grey-cast-iron' });
        return kc(thin) > kc(thick);
      }),
      settings,
    );
  });

  it('pecks end at the full depth and only go deeper', () => {
    fc.assert(
      fc.property(fc.double({ min: 1, max: 20, noNaN: true }), size, (diameter, depth) => {
        fc.pre(depth < diameter * 60);
        const rule = findRule('peck-plan');
        const answer = rule && answerRule(rule, { diameter, depth, material: 'copper' });
        const depths = answer?.ok ? answer.parts?.depths?.value : undefined;
        if (!Array.isArray(depths)) throw new Error('no depths');
        expect(depths.at(-1)).toBe(depth);
        expect([...depths].sort((a, b) => a - b)).toEqual(depths);
      }),
      settings,
    );
  });
});

/** The same question in both units. */
const bilingual: readonly (readonly [name: string, metric: string, inch: string])[] = [
  ['spindle-speed', 'surfaceSpeed=30.48 diameter=12.7', 'surfaceSpeed=100ft/min diameter=1/2in'],
  ['drill-point', 'diameter=12.7', 'diameter=0.5in'],
  [
    'turning-time',
    'length=254 feedPerRev=0.254 spindleSpeed=300',
    'length=10in feedPerRev=10thou/rev spindleSpeed=5rev/s',
  ],
  [
    'pass-plan',
    'stockDiameter=50.8 finishDiameter=38.1 deepestCut=2.54 finishAllowance=0.508',
    'stockDiameter=2in finishDiameter=1.5in deepestCut=0.1in finishAllowance=20thou',
  ],
  [
    'bend-in-chuck',
    'force=444.82216152605 length=76.2 diameter=25.4 modulus=206842.71879505',
    'force=100lbf length=3in diameter=1in modulus=30000ksi',
  ],
  [
    'roughness-average',
    'feedPerRev=0.127 noseRadius=0.79375',
    'feedPerRev=0.005in noseRadius=1/32in',
  ],
  [
    'thermal-growth',
    'length=101.6 expansion=11.7 temperature=40',
    'length=4in expansion=6.5ppm/degF temperature=104degF',
  ],
  [
    'cutting-power',
    'kc=1500 mc=0.22 feedPerRev=0.254 depth=2.54 surfaceSpeed=91.44',
    'kc=1500 mc=0.22 feedPerRev=0.01in depth=0.1in surfaceSpeed=300ft/min',
  ],
];

describe('units do not matter', () => {
  it.each(bilingual)('%s answers %s and %s alike', (name, metric, inch) => {
    const [a, b] = [metric, inch].map((words) => {
      const rule = findRule(name);
      if (rule === undefined) throw new Error(name);
      const read = readAsked(rule, words.split(' '));
      if (!read.ok) throw new Error(read.fault);
      return numberOf(name, read.value);
    });
    close(a ?? Number.NaN, b ?? Number.NaN);
  });
});
