import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  decadeFigures,
  keptApart,
  linearScale,
  logScale,
  roundFigures,
  stretchOf,
} from '../../../src/screens/plots/scale.ts';

const SEED = { seed: 20261125, numRuns: 200 };

describe('a scale', () => {
  it('puts its ends at its ends, whichever way the places run', () => {
    const scale = linearScale([10, 20], [300, 100]);
    expect([scale(10), scale(15), scale(20)]).toEqual([300, 200, 100]);
  });

  it('gives equal ratios equal steps when it is logarithmic', () => {
    const scale = logScale([1, 100], [0, 200]);
    expect(scale(10)).toBeCloseTo(100, 9);
    expect(scale(20) - scale(10)).toBeCloseTo(scale(40) - scale(20), 9);
  });

  it('puts a single figure in the middle', () => {
    expect(linearScale([5, 5], [0, 100])(5)).toBe(50);
  });
});

describe('the figures along an axis', () => {
  it('are 1, 2 or 5 of a decade', () => {
    expect(roundFigures([0, 0.21], 5)).toEqual([0, 0.05, 0.1, 0.15, 0.2]);
    expect(roundFigures([0, 3.4], 5)).toEqual([0, 1, 2, 3]);
    expect(decadeFigures([5, 100])).toEqual([5, 10, 20, 50, 100]);
    expect(decadeFigures([0.3, 4])).toEqual([0.5, 1, 2]);
  });

  it('lie between the ends, equally far apart, and are few', () => {
    fc.assert(
      fc.property(
        fc.double({ min: -1000, max: 1000, noNaN: true }),
        fc.double({ min: 0.01, max: 1000, noNaN: true }),
        fc.integer({ min: 2, max: 10 }),
        (from, length, count) => {
          const figures = roundFigures([from, from + length], count);
          const gaps = figures.slice(1).map((one, index) => one - (figures[index] ?? 0));
          for (const gap of gaps) expect(gap).toBeCloseTo(gaps[0] ?? 0, 6);
          expect(figures.length).toBeLessThanOrEqual(count + 1);
          for (const one of figures) {
            expect(one).toBeGreaterThanOrEqual(from - 1e-6);
            expect(one).toBeLessThanOrEqual(from + length + 1e-6);
          }
        },
      ),
      SEED,
    );
  });

  it('are left out where they would run into each other', () => {
    expect(keptApart([1, 2, 3, 4, 5], (one) => one * 10, 20)).toEqual([1, 3, 5]);
  });

  it('have room at both ends, even when all figures are one', () => {
    expect(stretchOf([10, 20], 0.1)).toEqual([9, 21]);
    const [low, high] = stretchOf([7, 7], 0.1);
    expect(low).toBeLessThan(7);
    expect(high).toBeGreaterThan(7);
  });
});
