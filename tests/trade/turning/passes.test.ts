/** Passes reach the size, and never cut deeper than allowed or past the finish. */

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { answerOf, faultOf, given, numberOf, partOf } from '../asking.ts';

const job = fc.record({
  from: fc.double({ min: 5, max: 200, noNaN: true }),
  change: fc.double({ min: 0.01, max: 60, noNaN: true }),
  deepestCut: fc.double({ min: 0.3, max: 5, noNaN: true }),
  finishAllowance: fc.double({ min: 0, max: 0.6, noNaN: true }),
  inside: fc.boolean(),
});

type Job = typeof job extends fc.Arbitrary<infer T> ? T : never;

/** Work turned from a larger diameter, or bored from a smaller one. */
function planOf({ from, change, deepestCut, finishAllowance, inside }: Job) {
  const [small, large] = [from, from + change];
  const values = inside
    ? { stockDiameter: small, finishDiameter: large }
    : { stockDiameter: large, finishDiameter: small };
  return { ...values, deepestCut, finishAllowance };
}

function listPart(name: string, values: ReturnType<typeof planOf>): readonly number[] {
  const value = given('pass-plan', values).parts?.[name]?.value;
  return Array.isArray(value) ? value : [];
}

describe('pass-plan', () => {
  it('takes the stock to the finish with what its parts say', () => {
    fc.assert(
      fc.property(job, (one) => {
        const values = planOf(one);
        const parts = given('pass-plan', values).parts;
        const roughed = Number(parts?.roughingPasses?.value) * Number(parts?.roughingDepth?.value);
        const removed = 2 * (roughed + Number(parts?.finishingDepth?.value));
        expect(removed).toBeCloseTo(one.change, 9);
      }),
      { seed: 5 },
    );
  });

  it('never cuts deeper than the deepest cut', () => {
    fc.assert(
      fc.property(job, (one) => {
        const values = planOf(one);
        const depth = partOf('pass-plan', 'roughingDepth', values);
        const last = partOf('pass-plan', 'finishingDepth', values);
        expect(Math.max(depth, last)).toBeLessThanOrEqual(one.deepestCut * (1 + 1e-6));
      }),
      { seed: 5 },
    );
  });

  it('needs no pass less: one fewer would be too deep', () => {
    fc.assert(
      fc.property(job, (one) => {
        const passes = partOf('pass-plan', 'roughingPasses', planOf(one));
        const rough = (one.change - Math.min(one.change, one.finishAllowance)) / 2;
        if (passes > 0) expect(rough).toBeGreaterThan((passes - 1) * one.deepestCut * (1 - 1e-6));
      }),
      { seed: 5 },
    );
  });

  it('lists diameters that go one way, to the allowance', () => {
    const values = { stockDiameter: 30, finishDiameter: 24, deepestCut: 1, finishAllowance: 0.4 };
    const diameters = listPart('roughingDiameters', values);
    expect(diameters.map((one) => Number(one.toFixed(6)))).toEqual([28.133333, 26.266667, 24.4]);
  });

  it('refuses a finishing allowance deeper than the deepest cut', () => {
    const values = { stockDiameter: 30, finishDiameter: 20, deepestCut: 0.2, finishAllowance: 1 };
    expect(faultOf('pass-plan', values)).toContain('leave less');
  });
});

const dials = fc.constantFrom('diameter', 'radius');
const graduations = fc.constantFrom(0.01, 0.02, 0.025, 0.05);

describe('next-pass', () => {
  it('never cuts past the finish or deeper than allowed, on any dial', () => {
    fc.assert(
      fc.property(job, dials, graduations, (one, dialReads, graduation) => {
        const { stockDiameter, ...rest } = planOf(one);
        const direction = one.inside ? 'inside' : 'outside';
        const asked = { measured: stockDiameter, ...rest, direction, dialReads, graduation };
        const depth = partOf('next-pass', 'depthASide', asked);
        expect(depth).toBeLessThanOrEqual(one.deepestCut * (1 + 1e-6));
        expect(2 * depth).toBeLessThanOrEqual(one.change + 1e-6);
      }),
      { seed: 5 },
    );
  });

  it('moves the dial by whole divisions', () => {
    fc.assert(
      fc.property(job, dials, graduations, (one, dialReads, graduation) => {
        const { stockDiameter, ...rest } = planOf(one);
        const direction = one.inside ? 'inside' : 'outside';
        const asked = { measured: stockDiameter, ...rest, direction, dialReads, graduation };
        const divisions = numberOf('next-pass', asked) / graduation;
        expect(Math.abs(divisions - Math.round(divisions))).toBeLessThan(1e-6);
      }),
      { seed: 5 },
    );
  });

  it('comes to within a division of the finish when every cut comes out as set', () => {
    fc.assert(
      fc.property(job, dials, graduations, (one, dialReads, graduation) => {
        const { stockDiameter, ...rest } = planOf(one);
        const direction = one.inside ? 'inside' : 'outside';
        let measured = stockDiameter;
        for (let cut = 0; cut < MOST_CUTS; cut += 1) {
          const asked = { measured, ...rest, direction, dialReads, graduation };
          if (numberOf('next-pass', asked) === 0) break;
          measured = partOf('next-pass', 'diameterAfter', asked);
        }
        const division = dialReads === 'radius' ? graduation * 2 : graduation;
        expect(Math.abs(measured - rest.finishDiameter)).toBeLessThan(division + 1e-6);
      }),
      { seed: 5, numRuns: 60 },
    );
  });

  // Dials: Graduated dials (direct and radius reading); sums by hand.
  it.each([
    ['diameter', 42.5, 0.5, 0.25, 1],
    ['radius', 42.5, 0.24, 0.24, 1],
    ['diameter', 46, 3.5, 1.75, 0],
    ['radius', 46, 1.74, 1.74, 0],
  ])(
    'on a %s dial at %d moves %d, %d a side, last %d',
    (dialReads, measured, move, depth, last) => {
      const asked = { measured, finishDiameter: 42, deepestCut: 2, dialReads };
      expect(numberOf('next-pass', asked)).toBeCloseTo(move, 9);
      expect(partOf('next-pass', 'depthASide', asked)).toBeCloseTo(depth, 9);
      expect(partOf('next-pass', 'lastPass', asked)).toBe(last);
    },
  );

  it('says that nothing is left at size', () => {
    const asked = { measured: 42, finishDiameter: 42, deepestCut: 2, dialReads: 'radius' };
    expect(given('next-pass', asked)).toMatchObject({ value: 0 });
    expect(given('next-pass', asked).working).toContain('at size, nothing left');
  });

  it.each([
    ['outside', 41.99, 'smaller'],
    ['inside', 42.01, 'larger'],
  ])('refuses %s work that measures %d: it is already %s', (direction, measured, side) => {
    const asked = { measured, finishDiameter: 42, deepestCut: 2, dialReads: 'radius', direction };
    expect(faultOf('next-pass', asked)).toContain(`already 0.01 mm ${side} than the finish`);
  });
});

/** More cuts than any of these jobs needs. */
const MOST_CUTS = 400;

describe('dial-setting', () => {
  it('moves a diameter dial twice as far as a radius dial', () => {
    fc.assert(
      fc.property(fc.double({ min: 0, max: 50, noNaN: true }), (change) => {
        const onDiameter = numberOf('dial-setting', { change, dialReads: 'diameter' });
        const onRadius = numberOf('dial-setting', { change, dialReads: 'radius' });
        expect(onDiameter).toBeCloseTo(2 * onRadius, 12);
      }),
      { seed: 5 },
    );
  });

  it('goes to the nearest division, a half to the even one', () => {
    const divisions = (change: number) =>
      partOf('dial-setting', 'divisions', { change, dialReads: 'diameter', graduation: 0.02 });
    expect([0.05, 0.07, 0.049, 0.051].map(divisions)).toEqual([2, 4, 2, 3]);
  });
});

describe('feeds', () => {
  const feeds = [0.05, 0.1, 0.18, 0.3];

  it.each([
    [0.2, 0.18, 'the wanted feed'],
    [0.04, 0.05, "the card's finest feed"],
    [0.5, 0.3, "the card's coarsest feed"],
  ])('for %d takes %d because of %s', (feedPerRev, value, ruledBy) => {
    expect(given('card-feed', { feedPerRev, feeds })).toMatchObject({ value, ruledBy });
  });

  it('sends to hand feed when the finest is more than twice the wanted', () => {
    expect(faultOf('card-feed', { feedPerRev: 0.02, feeds })).toContain('feed by hand');
  });

  it('never takes a coarser feed than wanted while the card has a finer one', () => {
    const wantedFeeds = fc.double({ min: 0.05, max: 2, noNaN: true });
    fc.assert(
      fc.property(wantedFeeds, (feedPerRev) => {
        const answer = answerOf('card-feed', { feedPerRev, feeds });
        return answer.ok && answer.value <= feedPerRev * (1 + 1e-6);
      }),
      { seed: 5 },
    );
  });
});
