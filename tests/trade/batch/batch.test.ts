/** Batch figures under shifts and scales, and readings in a row. */

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { deviationOf, meanOf, rangeOf } from '../../../src/trade/batch/spread.ts';
import { runAtEnd } from '../../../src/trade/batch/trend.ts';
import { faultOf, given, numberOf, partOf } from '../asking.ts';

const settings = { seed: 56 };
const readings = fc.array(fc.double({ min: 10, max: 11, noNaN: true }), {
  minLength: 3,
  maxLength: 20,
});

describe('spread', () => {
  it('does not move with the readings, and grows with their scale', () => {
    fc.assert(
      fc.property(readings, (list) => {
        const moved = list.map((one) => 3 * one + 7);
        expect(meanOf(moved)).toBeCloseTo(3 * meanOf(list) + 7, 6);
        expect(rangeOf(moved)).toBeCloseTo(3 * rangeOf(list), 6);
        expect(deviationOf(moved)).toBeCloseTo(3 * deviationOf(list), 6);
      }),
      settings,
    );
  });

  it('is refused for one reading', () => {
    expect(faultOf('batch-spread', { readings: [10] })).toContain('two or more');
  });
});

describe('capability', () => {
  it('is the same in inches, never above Cp, and equal to it in the middle', () => {
    const mean = fc.double({ min: 9.96, max: 10.04, noNaN: true });
    fc.assert(
      fc.property(mean, (at) => {
        const values = { lower: 9.95, upper: 10.05, mean: at, sigma: 0.01 };
        const cpk = numberOf('capability', values);
        const inches = {
          lower: 9.95 / 25.4,
          upper: 10.05 / 25.4,
          mean: at / 25.4,
          sigma: 0.01 / 25.4,
        };
        expect(numberOf('capability', inches)).toBeCloseTo(cpk, 6);
        expect(cpk).toBeLessThanOrEqual(partOf('capability', 'cp', values) + 1e-9);
      }),
      settings,
    );
    const centred = { lower: 9.95, upper: 10.05, mean: 10, sigma: 0.01 };
    expect(numberOf('capability', centred)).toBeCloseTo(partOf('capability', 'cp', centred), 9);
  });

  it('is told in words', () => {
    const at = (mean: number) =>
      given('capability', { lower: 9.95, upper: 10.05, mean, sigma: 0.0125 }).word;
    expect([at(10), at(10.01), at(10.03), at(10.06)]).toEqual([
      'capable',
      'just capable',
      'not capable',
      'not capable, the mean is outside',
    ]);
    expect(faultOf('capability', { lower: 1, upper: 2 })).toContain('mean and sigma');
    expect(faultOf('capability', { lower: 1, upper: 2, readings: [1.5, 1.5] })).toContain(
      'too coarse',
    );
  });
});

describe('control limits', () => {
  it('hold every subgroup of a quiet process and name one that is out', () => {
    const quiet = { means: [10, 10.01, 9.99, 10], ranges: [0.02, 0.02, 0.02, 0.02], size: 5 };
    expect(given('control-limits', quiet).word).toBe('in control');
    const wild = { ...quiet, means: [10, 10, 10.2, 10] };
    expect(given('control-limits', wild).word).toContain('subgroup');
    expect(faultOf('control-limits', { means: [1, 2], ranges: [1] })).toContain('one of each');
  });
});

describe('trend and tool', () => {
  it('counts only the readings at the end that go one way', () => {
    fc.assert(
      fc.property(readings, fc.integer({ min: 1, max: 8 }), (list, more) => {
        const last = list.at(-1) ?? 0;
        const rising = [...list, ...Array.from({ length: more }, (_, index) => last + index + 1)];
        expect(runAtEnd(rising, 1)).toBe(runAtEnd(list, 1) + more);
        expect(runAtEnd(rising, -1)).toBe(1);
      }),
      settings,
    );
  });

  it('moves the tool towards the middle, and only half on a radius dial', () => {
    const values = { readings: [25.03, 25.03], lower: 25, upper: 25.02 };
    expect(numberOf('tool-offset', values)).toBeCloseTo(-0.02, 9);
    expect(partOf('tool-offset', 'dial', { ...values, dial: 'radius' })).toBeCloseTo(-0.01, 9);
    expect(faultOf('tool-offset', { readings: [1], lower: 0, upper: 2 })).toContain('two or more');
  });
});

describe('time', () => {
  it('grows by the piece time with every piece', () => {
    const batch = { cutting: 2.5, handling: 0.8, setUp: 30, checking: 0.4, checkEvery: 4 };
    const each = partOf('batch-time', 'each', { pieces: 1, ...batch });
    const step =
      numberOf('batch-time', { pieces: 8, ...batch }) -
      numberOf('batch-time', { pieces: 7, ...batch });
    expect(step).toBeCloseTo(each, 9);
  });
});
