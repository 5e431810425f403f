/** The card's speed never passes a limit, and says which one ruled. */

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { answerOf, faultOf, given } from '../asking.ts';

const CARD = [70, 200, 350, 450];
const steel25 = { diameter: 25, surfaceSpeed: 28, speeds: CARD };

const run = fc.record({
  diameter: fc.double({ min: 1, max: 400, noNaN: true }),
  surfaceSpeed: fc.double({ min: 2, max: 400, noNaN: true }),
  speeds: fc.array(fc.integer({ min: 20, max: 3000 }), { minLength: 1, maxLength: 12 }),
  chuckLimit: fc.option(fc.integer({ min: 30, max: 4000 }), { nil: undefined }),
  cardLimit: fc.option(fc.integer({ min: 30, max: 4000 }), { nil: undefined }),
  workLimit: fc.option(fc.integer({ min: 30, max: 4000 }), { nil: undefined }),
});

type Run = typeof run extends fc.Arbitrary<infer T> ? T : never;

const idealOf = ({ surfaceSpeed, diameter }: Run) => (1000 * surfaceSpeed) / (Math.PI * diameter);

function hardest({ chuckLimit, cardLimit, workLimit }: Run): number {
  return Math.min(...[chuckLimit, cardLimit, workLimit].map((one) => one ?? Infinity));
}

describe('card-speed', () => {
  // 1000 × 28 ÷ (π × 25) = 356.5, worked out by hand.
  it('takes the next lower speed on the card', () => {
    expect(given('card-speed', steel25)).toMatchObject({
      value: 350,
      ruledBy: 'the surface speed',
    });
  });

  it.each([
    [{ chuckLimit: 300 }, 200, "the chuck's mark"],
    [{ workLimit: 200 }, 200, "the work's limit"],
    [{ cardLimit: 100 }, 70, "the card's top speed"],
    [{ surfaceSpeed: 280 }, 450, "the card's top speed"],
    [{ diameter: 250 }, 70, "the card's lowest speed"],
  ])('with %j sets %d because of %s', (change, value, ruledBy) => {
    expect(given('card-speed', { ...steel25, ...change })).toMatchObject({ value, ruledBy });
  });

  it('refuses when even the lowest speed on the card is above the mark', () => {
    expect(faultOf('card-speed', { ...steel25, chuckLimit: 60 })).toBe(
      "The slowest speed on the card is 70 rev/min and the chuck's mark allows 60; no speed of this machine is safe here. Use another machine, chuck or set-up.",
    );
  });

  it('never sets a speed above chuck, card or work, and only speeds the card has', () => {
    fc.assert(
      fc.property(run, (one) => {
        const answer = answerOf('card-speed', one);
        if (!answer.ok) return Math.min(...one.speeds) > hardest(one);
        return answer.value <= hardest(one) && one.speeds.includes(answer.value);
      }),
      { seed: 5, numRuns: 500 },
    );
  });

  it('is above the ideal speed only when the card has nothing lower, and says so', () => {
    fc.assert(
      fc.property(run, (one) => {
        const answer = answerOf('card-speed', one);
        fc.pre(answer.ok && answer.value > idealOf(one) * (1 + 1e-6));
        return (
          answer.ok &&
          answer.value === Math.min(...one.speeds) &&
          answer.ruledBy === "the card's lowest speed"
        );
      }),
      { seed: 5, numRuns: 200 },
    );
  });

  it('leaves no faster allowed speed on the card', () => {
    fc.assert(
      fc.property(run, (one) => {
        const answer = answerOf('card-speed', one);
        fc.pre(answer.ok);
        const ceiling = Math.min(idealOf(one), hardest(one));
        return one.speeds.every((speed) => speed > ceiling || (answer.ok && speed <= answer.value));
      }),
      { seed: 5, numRuns: 500 },
    );
  });

  it('never gets faster as the work gets larger', () => {
    fc.assert(
      fc.property(run, fc.double({ min: 1, max: 5, noNaN: true }), (one, larger) => {
        const small = answerOf('card-speed', one);
        const large = answerOf('card-speed', { ...one, diameter: one.diameter * larger });
        return !small.ok || !large.ok || large.value <= small.value;
      }),
      { seed: 5, numRuns: 300 },
    );
  });
});

describe('a speed asked by material', () => {
  const brass = { material: 'free-cutting-brass', diameter: 30 };

  // 1000 × 70 ÷ (π × 30) = 742.7, worked out by hand.
  it('is the ideal speed away from a machine', () => {
    const answer = given('speed-for-material', brass);
    expect(answer.value).toBeCloseTo(742.7, 1);
    expect(answer.source).toContain('hand-out');
  });

  it('keeps to the chuck even without a card', () => {
    expect(given('speed-for-material', { ...brass, chuckLimit: 500 })).toMatchObject({
      value: 500,
      ruledBy: "the chuck's mark",
    });
  });

  it('keeps to the card, also when parting and drilling', () => {
    const card = { speeds: CARD, diameter: 30, material: 'low-carbon-steel' };
    expect(given('speed-for-material', { ...card, operation: 'turn' }).value).toBe(200);
    expect(given('parting-speed', card).value).toBe(70);
    expect(given('drill-speed', { ...card, diameter: 20 }).value).toBe(350);
  });

  it('is slower in a deep hole', () => {
    const drill = { material: 'low-carbon-steel', diameter: 6 };
    const shallow = given('drill-speed', { ...drill, depth: 12 }).value;
    const deep = given('drill-speed', { ...drill, depth: 30 }).value;
    expect(deep / shallow).toBeCloseTo(0.7, 9);
  });
});

describe('running-speed', () => {
  const at = (spindleSpeed: number) => ({ spindleSpeed, diameter: 25, surfaceSpeed: 28 });

  // π × 25 × 350 ÷ 1000 = 27.5, by hand.
  it.each([
    [350, 27.5, 'good'],
    [200, 15.7, 'slow'],
    [450, 35.3, 'fast'],
  ])('at %d rev/min is %d m/min: %s', (spindle, speed, word) => {
    const answer = given('running-speed', at(spindle));
    expect(answer.value).toBeCloseTo(speed, 1);
    expect(answer.word).toBe(word);
  });

  it("is refused above the chuck's mark", () => {
    expect(faultOf('running-speed', { ...at(450), chuckLimit: 400 })).toContain(
      "450 rev/min is above the chuck's mark, 400; stop and set a lower speed.",
    );
  });
});
