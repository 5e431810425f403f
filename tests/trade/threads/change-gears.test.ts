/** Trains against a plain search, and the dial against turning the lead screw by hand. */

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { marksApart, turnsToMeet } from '../../../src/trade/threads/chasing-dial.ts';
import { nearestTrain } from '../../../src/trade/threads/gear-trains.ts';
import { faultOf, given } from '../asking.ts';

const settings = { seed: 127, numRuns: 60 };
const teeth = fc.integer({ min: 16, max: 127 });

/** The smallest error of any train of two or of four gears that clears its studs by 15 teeth. */
function leastError(ratio: number, gears: readonly number[]): number {
  let least = Number.POSITIVE_INFINITY;
  const each = gears.map((_, index) => index);
  const at = (index: number) => gears[index] ?? Number.NaN;
  for (const a of each) {
    for (const b of each.filter((one) => one !== a)) {
      least = Math.min(least, Math.abs(at(a) / at(b) / ratio - 1));
      for (const c of each.filter((one) => one !== a && one !== b)) {
        for (const d of each.filter((one) => one !== a && one !== b && one !== c)) {
          const clear = at(a) + at(b) >= at(c) + 15 && at(c) + at(d) >= at(b) + 15;
          if (!clear) continue;
          least = Math.min(least, Math.abs((at(a) * at(c)) / (at(b) * at(d)) / ratio - 1));
        }
      }
    }
  }
  return least;
}

describe('change gears', () => {
  it('are as near as the best train of a search through every order', () => {
    const set = fc.array(teeth, { minLength: 4, maxLength: 7 });
    const ratio = fc.double({ min: 0.1, max: 4, noNaN: true });
    fc.assert(
      fc.property(set, ratio, (gears, wanted) => {
        const train = nearestTrain(wanted, gears);
        const error = Math.abs((train?.ratio ?? 0) / wanted - 1);
        expect(error).toBeLessThanOrEqual(leastError(wanted, gears) + 1e-8);
      }),
      settings,
    );
  });

  it('use each gear of the set once at most', () => {
    const train = nearestTrain(0.36, [30, 50, 60, 100, 45]);
    const used = [...(train?.drivers ?? []), ...(train?.driven ?? [])];
    expect(new Set(used).size).toBe(used.length);
  });

  it('take a simple train when a compound one is no nearer', () => {
    expect(nearestTrain(0.5, [20, 30, 40, 60])?.drivers).toHaveLength(1);
  });

  it('are refused without a set, or with a lead given twice', () => {
    const ask = { screwTpi: 8, gears: [20, 40] };
    expect(faultOf('change-gears', { ...ask, pitch: 1, tpi: 20 })).toContain('one of the two');
    expect(faultOf('change-gears', { ...ask, pitch: 1, gears: [20] })).toContain('Two gears');
    expect(faultOf('change-gears', { ...ask, pitch: 1, gears: [20, 30.5] })).toContain(
      'whole numbers',
    );
  });

  it('say in the answer how far off the lead is', () => {
    const answer = given('change-gears', { pitch: 1.5, screwTpi: 8, gears: [30, 63] });
    expect(answer.working).toContain('% off');
    expect(answer.working).toContain('add gears');
  });
});

describe('the chasing dial', () => {
  it('closes only where thread and screw stand as at the start', () => {
    const threads = fc.integer({ min: 3, max: 40 });
    fc.assert(
      fc.property(
        threads,
        fc.constantFrom(4, 6, 8),
        fc.constantFrom(16, 24, 32),
        (tpi, screwTpi, dialTeeth) => {
          const marks = 8;
          const turns = turnsToMeet(1 / tpi, 1 / screwTpi) ?? Number.NaN;
          const apart = marksApart(turns, dialTeeth, marks);
          // Turning on: after so many screw turns the spindle has made turns × tpi ÷ screwTpi turns.
          const whole = (screwTurns: number) => ((screwTurns * tpi) / screwTpi) % 1 === 0;
          const screwTurnsAt = (mark: number) => (mark * dialTeeth) / marks;
          const fits = (mark: number) => screwTurnsAt(mark) % 1 === 0 && whole(screwTurnsAt(mark));
          const works = fits(marks);
          expect(apart > 0).toBe(works);
          if (!works) return;
          const first = Array.from({ length: marks }, (_, index) => index + 1).find(fits);
          expect(apart).toBe(first);
        },
      ),
      settings,
    );
  });
});
