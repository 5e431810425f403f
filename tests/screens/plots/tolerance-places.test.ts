import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { tolerancePlaces } from '../../../src/screens/plots/tolerance-places.ts';

describe('the places on a tolerance bar', () => {
  it('give the zone the middle half', () => {
    const { lower, upper, reading } = tolerancePlaces(
      { lower: 24.98, upper: 25, reading: 24.99 },
      0,
      400,
    );
    expect([lower, upper]).toEqual([100, 300]);
    expect(reading).toBeCloseTo(200, 6);
  });

  it('put a reading inside the zone exactly when it lies within the limits', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 100_000 }),
        fc.integer({ min: 1, max: 500 }),
        fc.integer({ min: -2000, max: 2000 }),
        (low, wide, off) => {
          const [lower, upper, reading] = [low / 1000, (low + wide) / 1000, (low + off) / 1000];
          const places = tolerancePlaces({ lower, upper, reading }, 20, 620);
          const inside =
            (places.reading ?? -1) >= places.lower - 1e-6 &&
            (places.reading ?? -1) <= places.upper + 1e-6;
          expect(inside).toBe(off >= 0 && off <= wide);
        },
      ),
      { seed: 20261125, numRuns: 300 },
    );
  });

  it('keep a reading far outside on the bar, and say on which side it lies', () => {
    const far = tolerancePlaces({ lower: 10, upper: 11, reading: 99 }, 0, 400);
    expect(far).toMatchObject({ reading: 400, beyond: 'above' });
    expect(tolerancePlaces({ lower: 10, upper: 11, reading: 1 }, 0, 400).beyond).toBe('below');
  });

  it('have no place for a reading not yet taken', () => {
    expect(tolerancePlaces({ lower: 10, upper: 11 }, 0, 400).reading).toBeUndefined();
  });
});
