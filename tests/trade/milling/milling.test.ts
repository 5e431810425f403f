/** Milling sums that must come back. */

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { radialThinning } from '../../../src/trade/milling/chip-thinning.ts';
import { settings as indexSettings } from '../../../src/trade/milling/indexing.ts';
import { meanChip } from '../../../src/trade/milling/power.ts';
import { faultOf, given, numberOf, partOf } from '../asking.ts';

const settings = { seed: 40 };
const cutter = fc.double({ min: 3, max: 200, noNaN: true });
const share = fc.double({ min: 0.005, max: 1, noNaN: true });

function listOf(name: string, part: string, values: Record<string, number>): readonly number[] {
  const list = given(name, values).parts?.[part]?.value;
  if (list === undefined || typeof list === 'number') throw new Error(`${part} is no list`);
  return list;
}

describe('chips', () => {
  it('are never thicker than the feed a tooth, and whole from half the cutter on', () => {
    fc.assert(
      fc.property(cutter, share, (diameter, part) => {
        const thinning = radialThinning(part * diameter, diameter);
        expect(thinning).toBeGreaterThan(0);
        expect(thinning).toBeLessThanOrEqual(1);
        if (part >= 0.5) expect(thinning).toBe(1);
      }),
      settings,
    );
  });

  it('are on the mean near fz √(ae/D) when the cut is thin (cutter maker’s short form)', () => {
    fc.assert(
      fc.property(cutter, fc.double({ min: 0.005, max: 0.1, noNaN: true }), (diameter, part) => {
        const short = 0.1 * Math.sqrt(part);
        expect(meanChip(0.1, part * diameter, diameter, 90) / short).toBeCloseTo(1, 1);
      }),
      settings,
    );
  });

  it('leave the wanted thickness when fed at the corrected feed', () => {
    fc.assert(
      fc.property(cutter, share, (diameter, part) => {
        const values = { chip: 0.1, cutter: diameter, width: part * diameter };
        const feed = numberOf('chip-thinning', values);
        expect(feed * partOf('chip-thinning', 'factor', values)).toBeCloseTo(0.1, 9);
      }),
      settings,
    );
  });
});

describe('indexing', () => {
  it('turns through exactly one division, on a circle that is there', () => {
    const circles = [15, 16, 17, 18, 19, 20, 21, 23, 27, 29, 31, 33, 37, 39, 41, 43, 47, 49];
    fc.assert(
      fc.property(fc.integer({ min: 2, max: 400 }), (divisions) => {
        for (const { turns, holes, circle } of indexSettings(40 / divisions, circles)) {
          // In whole numbers: (turns × circle + holes) × divisions = 40 × circle.
          if (circle === 0) expect(turns * divisions).toBe(40);
          else expect((turns * circle + holes) * divisions).toBe(40 * circle);
        }
        const possible = circles.some((circle) => (40 * circle) % divisions === 0);
        expect(indexSettings(40 / divisions, circles).length > 0).toBe(
          possible || 40 % divisions === 0,
        );
      }),
      settings,
    );
  });

  it('names the nearest setting when there is none', () => {
    expect(faultOf('indexing', { divisions: 127 })).toMatch(/Nearest: \d+ holes on \d+/);
    expect(faultOf('indexing', { divisions: 7, circles: [20.5] })).toContain('whole counts');
  });
});

describe('bolt circles', () => {
  it('lie on their circle, evenly, round their centre', () => {
    const place = fc.double({ min: -500, max: 500, noNaN: true });
    fc.assert(
      fc.property(
        fc.integer({ min: 2, max: 40 }),
        cutter,
        place,
        place,
        (holes, diameter, centreX, centreY) => {
          const values = { holes, diameter, centreX, centreY, start: 17 };
          const [x, y] = [listOf('bolt-circle', 'x', values), listOf('bolt-circle', 'y', values)];
          const chord = numberOf('bolt-circle', values);
          x.forEach((one, index) => {
            const [py, next] = [y[index] ?? Number.NaN, (index + 1) % holes];
            expect(Math.hypot(one - centreX, py - centreY)).toBeCloseTo(diameter / 2, 6);
            const gap = Math.hypot((x[next] ?? 0) - one, (y[next] ?? 0) - py);
            expect(gap).toBeCloseTo(chord, 6);
          });
        },
      ),
      settings,
    );
  });
});

describe('feeds, power and time', () => {
  it('never set a table feed above the wanted one', () => {
    const feeds = [25, 40, 63, 100, 160, 250];
    fc.assert(
      fc.property(fc.double({ min: 0.02, max: 0.3, noNaN: true }), (feedPerTooth) => {
        const wanted = { feedPerTooth, teeth: 4, spindleSpeed: 400 };
        const set = numberOf('table-feed', { ...wanted, feeds });
        expect(set).toBeLessThanOrEqual(numberOf('table-feed', wanted) * (1 + 1e-9));
        expect(feeds).toContain(set);
      }),
      settings,
    );
    const slow = { feedPerTooth: 0.01, teeth: 1, spindleSpeed: 60, feeds };
    expect(faultOf('table-feed', slow)).toContain('slowest table feed');
  });

  it('refuse a cut beyond the motor and say how deep it may be, which then is allowed', () => {
    const cut = {
      width: 40,
      cutter: 50,
      teeth: 5,
      feedPerTooth: 0.1,
      spindleSpeed: 500,
      kc: 1700,
      mc: 0.25,
    };
    const told = faultOf('milling-cut-power', { ...cut, depth: 8, motor: 1.5 });
    const depth = Number(/at most ([\d.]+) mm/.exec(told)?.[1]);
    expect(depth).toBeLessThan(8);
    expect(given('milling-cut-power', { ...cut, depth: depth * 0.98, motor: 1.5 }).ok).toBe(true);
  });

  it('take longer with a longer run-up', () => {
    const cut = { length: 100, feed: 100, cutter: 63 };
    const deeper = [1, 5, 10, 20, 30].map((across) => numberOf('milling-time', { ...cut, across }));
    expect([...deeper].sort((a, b) => a - b)).toEqual(deeper);
    expect(faultOf('milling-time', { ...cut, across: 70 })).toContain('more passes');
  });
});

describe('cuts down to a depth', () => {
  it('come to the depth together, none deeper than the deepest', () => {
    const millimetres = fc.double({ min: 0.1, max: 60, noNaN: true });
    fc.assert(
      fc.property(millimetres, share, millimetres, (depth, part, deepestPass) => {
        const values = { depth, reached: depth * (1 - part), deepestPass };
        const each = numberOf('depth-passes', values);
        const passes = partOf('depth-passes', 'passes', values);
        expect(each).toBeLessThanOrEqual(deepestPass * (1 + 1e-5));
        expect(passes * each).toBeCloseTo(depth * part, 9);
      }),
      settings,
    );
  });

  it('are none where it is too deep already', () => {
    const told = faultOf('depth-passes', { depth: 6, reached: 6.4, deepestPass: 2 });
    expect(told).toContain('no cut can put it back');
  });
});

describe('rotary table and tramming', () => {
  it('turn back to the start after all divisions', () => {
    fc.assert(
      fc.property(fc.integer({ min: 2, max: 360 }), (divisions) => {
        const values = { divisions };
        const whole =
          partOf('rotary-table', 'turns', values) * 4 + partOf('rotary-table', 'rest', values);
        expect(whole * divisions).toBeCloseTo(360, 6);
      }),
      settings,
    );
  });

  it('hollow more with a wider cut and refuse a misread dial', () => {
    const at = (width: number) =>
      partOf('tramming-error', 'hollow', { sweep: 200, difference: 0.1, cutter: 80, width });
    expect(at(20)).toBeLessThan(at(60));
    expect(faultOf('tramming-error', { sweep: 10, difference: 12 })).toContain('misread');
  });

  it('refuse a blank that will not clean up', () => {
    const block = { finishLength: 100, finishWidth: 50, finishHeight: 30 };
    const blank = { roughLength: 104, roughWidth: 50, roughHeight: 32 };
    expect(faultOf('square-up', { ...block, ...blank })).toContain('clean up');
  });
});
