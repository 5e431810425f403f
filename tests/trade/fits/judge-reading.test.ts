/** Readings on both sides of each limit. */

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { judge } from '../../../src/trade/fits/judge-reading.ts';
import { faultOf, given, partOf } from '../asking.ts';

const limits = { lower: 24.98, upper: 24.993 };
const told = (reading: number, more: Record<string, number | string> = {}) =>
  given('judge-reading', { reading, ...limits, ...more });

describe('a reading against its limits', () => {
  it.each([
    [24.98, 'outside', 'within', 0],
    [24.993, 'outside', 'within', 0],
    [24.994, 'outside', 'rework', 0.001],
    [24.979, 'outside', 'lost', 0.001],
    [24.994, 'inside', 'lost', 0.001],
    [24.97, 'inside', 'rework', 0.01],
  ])('%d mm %s is %s by %d mm', (reading, side, word, amount) => {
    const answer = told(reading, { side });
    expect(answer.word).toBe(word);
    expect(answer.value).toBeCloseTo(amount, 9);
  });

  it('counts a reading inside the guard band as not sure, and names the gauge', () => {
    const answer = told(24.992, { uncertainty: 0.002 });
    expect(answer.word).toBe('rework');
    expect(answer.ruledBy).toBe('the gauge uncertainty');
    expect(told(24.991, { uncertainty: 0.002 }).word).toBe('within');
    expect(told(24.982, { uncertainty: 0.002 }).word).toBe('within');
  });

  it('refuses limits that are swapped and gauges that are too coarse', () => {
    expect(faultOf('judge-reading', { reading: 1, lower: 2, upper: 1 })).toContain('not below');
    expect(faultOf('guard-band', { ...limits, uncertainty: 0.01 })).toContain('finer gauge');
  });

  it('calls a reading within exactly when both limits hold', () => {
    const size = fc.double({ min: 24.9, max: 25.1, noNaN: true });
    fc.assert(
      fc.property(size, fc.constantFrom('outside', 'inside'), (reading, side) => {
        const { word, amount } = judge(reading, limits.lower, limits.upper, side);
        const inside = reading >= limits.lower - 1e-9 && reading <= limits.upper + 1e-9;
        expect(word === 'within').toBe(inside);
        expect(amount > 0).toBe(!inside);
      }),
      { seed: 1 },
    );
  });

  it('brings a part within when it is reworked by the amount', () => {
    const over = fc.double({ min: 24.994, max: 26, noNaN: true });
    fc.assert(
      fc.property(over, (reading) => {
        const { amount } = judge(reading, limits.lower, limits.upper, 'outside');
        expect(judge(reading - amount, limits.lower, limits.upper, 'outside').word).toBe('within');
      }),
      { seed: 2 },
    );
  });

  it('leaves the width less twice the uncertainty between guarded limits', () => {
    const values = { lower: 10, upper: 10.1, uncertainty: 0.01 };
    expect(partOf('guard-band', 'from', values)).toBeCloseTo(10.01, 9);
    expect(partOf('guard-band', 'to', values)).toBeCloseTo(10.09, 9);
    expect(given('guard-band', values).value).toBeCloseTo(0.08, 9);
  });
});
