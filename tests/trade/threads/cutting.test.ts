/** Passes, wires and drills: sums that must come back. */

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { inchDrills, metricDrills, nearestDrill } from '../../../src/trade/threads/drill-sizes.ts';
import { equalArea, increments, softenedFirst } from '../../../src/trade/threads/infeed.ts';
import { metricPitches } from '../../../src/trade/threads/standard-threads.ts';
import { faultOf, given, numberOf, partOf } from '../asking.ts';

const settings = { seed: 60 };
const depth = fc.double({ min: 0.1, max: 5, noNaN: true });
const passes = fc.integer({ min: 2, max: 40 });
const thread = fc.constantFrom(
  ...metricPitches.filter(([, pitch]) => pitch > 0).map(([size]) => `M${size}`),
);

describe('infeed', () => {
  it('ends exactly at the depth and never deepens a pass', () => {
    fc.assert(
      fc.property(depth, passes, (whole, count) => {
        const deep = equalArea(whole, count);
        const each = increments(deep);
        expect(deep.at(-1)).toBeCloseTo(whole, 12);
        expect(softenedFirst(whole, count).at(-1)).toBeCloseTo(whole, 12);
        expect(each.every((one) => one > 0)).toBe(true);
        expect([...each].sort((a, b) => b - a)).toEqual(each);
      }),
      settings,
    );
  });

  it('takes the same area off the flanks with every pass', () => {
    fc.assert(
      fc.property(depth, passes, (whole, count) => {
        const deep = [0, ...equalArea(whole, count)];
        const areas = deep.slice(1).map((one, index) => one ** 2 - (deep[index] ?? 0) ** 2);
        for (const area of areas) expect(area).toBeCloseTo(whole ** 2 / count, 9);
      }),
      settings,
    );
  });

  it('refuses so many passes that the last only rubs', () => {
    expect(faultOf('thread-infeed', { thread: 'M3', passes: 30 })).toContain('fewer passes');
  });

  it('feeds straight in when the compound is not swung', () => {
    const values = { thread: 'M10', compoundAngle: 0 };
    expect(numberOf('thread-infeed', values)).toBeCloseTo(
      partOf('thread-infeed', 'depth', values),
      12,
    );
  });
});

describe('wires', () => {
  it('give the pitch diameter back', () => {
    const share = fc.double({ min: 0.51, max: 1, noNaN: true });
    fc.assert(
      fc.property(thread, share, (name, part) => {
        const pitch = partOf('thread-sizes', 'pitch', { thread: name });
        const wire = part * pitch;
        const pitchDiameter = partOf('thread-sizes', 'pitchDiameter', { thread: name });
        const reading = numberOf('size-over-wires', { thread: name, wire });
        const back = numberOf('pitch-diameter-over-wires', { thread: name, wire, reading });
        expect(back).toBeCloseTo(pitchDiameter, 9);
      }),
      settings,
    );
  });

  it('are judged against the limits of the thread', () => {
    const at = (reading: number) =>
      given('pitch-diameter-over-wires', { thread: 'M10', wire: 0.895, reading }).word;
    // 6g of M10 over 0.895 mm wires is 10.248 to 10.380 mm (derived from ISO 965-1).
    expect([at(10.24), at(10.3), at(10.39)]).toEqual(['lost', 'within', 'rework']);
  });

  it('are refused when they sink or do not reach', () => {
    expect(faultOf('size-over-wires', { thread: 'M10', wire: 0.7 })).toContain('sinks');
    expect(faultOf('size-over-wires', { thread: 'M10', wire: 1.6 })).toContain('does not reach');
  });
});

describe('drills', () => {
  it('stand in rising order, and the nearest is never beaten by another', () => {
    for (const drills of [metricDrills, inchDrills]) {
      const sizes = drills.map(({ size }) => size);
      expect([...sizes].sort((a, b) => a - b)).toEqual(sizes);
      fc.assert(
        fc.property(fc.double({ min: 1, max: 40, noNaN: true }), (wanted) => {
          const found = nearestDrill(wanted, drills)?.size ?? Number.NaN;
          expect(
            sizes.every((size) => Math.abs(size - wanted) >= Math.abs(found - wanted) - 1e-9),
          ).toBe(true);
        }),
        settings,
      );
    }
  });

  it('give the wanted percent back, by either convention', () => {
    const percent = fc.double({ min: 40, max: 100, noNaN: true });
    const convention = fc.constantFrom('handbook', 'basic-profile');
    fc.assert(
      fc.property(thread, percent, convention, (name, wanted, by) => {
        const hole = numberOf('tap-drill-at-hand', {
          thread: name,
          percent: wanted,
          convention: by,
        });
        const drills = [hole];
        const values = { thread: name, percent: wanted, convention: by, drills };
        expect(partOf('tap-drill-at-hand', 'percent', values)).toBeCloseTo(wanted, 6);
        const ratio =
          partOf('tap-drill-at-hand', 'basicProfile', values) /
          partOf('tap-drill-at-hand', 'handbook', values);
        expect(ratio).toBeCloseTo(1.2, 9);
      }),
      settings,
    );
  });
});
