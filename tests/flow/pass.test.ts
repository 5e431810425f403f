/** Hand-worked passes; the arithmetic stands beside each row. Rounding down to the dial: common practice, no source. */

import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { StepOf } from '../../src/flow/index.ts';
import { nextPass } from '../../src/flow/pass.ts';
import { cardNamed, jobOf, passes, smallFlow, tell } from './shipped.ts';

type Side = 'outside' | 'inside';
const mm = (is: number) => ({ is, unit: 'mm' });

function passOf(reads: 'diameter' | 'radius', crossDivision: number, more: object = {}) {
  const metric = cardNamed('metric-lathe');
  const card = { ...metric, values: { ...metric.values, crossReads: reads, crossDivision } };
  const job = jobOf(smallFlow([passes('turn', more), tell('good')]), {}, card);
  const step = job.flow.steps.get('turn') as StepOf<'passes'>;
  return (size: number, dial: number) => nextPass(step, { size, dial }, {}, job.world);
}

describe('the next pass from 25 to 20, at most 1 a side, 0.5 left for the last', () => {
  const onDiameter = passOf('diameter', 0.02);
  const onRadius = passOf('radius', 0.05);

  test.each([
    // 25 − 20 = 5; less 0.5 is 4.5, so 2.25 a side: 3 cuts of 0.75. Dial reads 1.50, then 25 − 1.5 = 23.5.
    [
      25,
      0,
      { dial: 1.5, advance: 1.5, left: 5, depthASide: 0.75, diameterAfter: 23.5, last: false },
    ],
    // 3.5 − 0.5 = 3, 1.5 a side: 2 cuts of 0.75 again.
    [
      23.5,
      1.5,
      { dial: 3, advance: 1.5, left: 3.5, depthASide: 0.75, diameterAfter: 22, last: false },
    ],
    // 0.5 left: the finishing cut, 0.25 a side.
    [
      20.5,
      4.5,
      { dial: 5, advance: 0.5, left: 0.5, depthASide: 0.25, diameterAfter: 20, last: true },
    ],
    // 0.33 left: 0.33 ÷ 0.02 = 16.5 divisions, down to 16 = 0.32; 20.33 − 0.32 = 20.01, within 19.9 to 20.1.
    [
      20.33,
      4.67,
      { dial: 4.99, advance: 0.32, left: 0.33, depthASide: 0.16, diameterAfter: 20.01, last: true },
    ],
  ])('%d on a diameter dial at %d', (size, dial, wanted) => {
    expect(onDiameter(size, dial)).toMatchObject(close(wanted));
  });

  test.each([
    // 0.75 a side on a radius dial of 0.05: 15 divisions, the dial moves 0.75.
    [
      25,
      0,
      { dial: 0.75, advance: 0.75, left: 5, depthASide: 0.75, diameterAfter: 23.5, last: false },
    ],
    // 20.33: 0.165 a side, 3.3 divisions, down to 3 = 0.15; 20.33 − 0.3 = 20.03.
    [
      20.33,
      2.3,
      { dial: 2.45, advance: 0.15, left: 0.33, depthASide: 0.15, diameterAfter: 20.03, last: true },
    ],
  ])('%d on a radius dial at %d', (size, dial, wanted) => {
    expect(onRadius(size, dial)).toMatchObject(close(wanted));
  });
});

test('a bore grows: from 18 to 20 the same way round', () => {
  const bore = passOf('diameter', 0.02, { side: 'inside', from: mm(18) });
  // 2 − 0.5 = 1.5, 0.75 a side in one cut: the dial moves 1.5, the bore is 19.5.
  expect(bore(18, 0)).toMatchObject(
    close({ dial: 1.5, left: 2, depthASide: 0.75, diameterAfter: 19.5, last: false }),
  );
});

describe('a dial too coarse for the limits', () => {
  const limits = (lower: number, upper: number, side: Side = 'outside') => ({
    side,
    lower: mm(lower),
    upper: mm(upper),
    finish: mm((lower + upper) / 2),
  });

  test('goes on by half a division where that lands within', () => {
    // Radius dial of 0.0254, one division is 0.0508 on the diameter. 16.002 is 0.002 over; a whole division
    // gives 15.9512, under 15.957; half of one gives 16.002 − 0.0254 = 15.9766, within.
    const turn = passOf('radius', 0.0254, limits(15.957, 16));
    const next = turn(16.002, 4.4958);
    expect(next).toMatchObject(
      close({
        advance: 0.0127,
        dial: 4.5085,
        depthASide: 0.0127,
        diameterAfter: 15.9766,
        last: true,
      }),
    );
    expect(next.answer).toMatchObject({
      working: expect.stringContaining('go on to 0.0127 mm on the dial, then 15.9766 mm'),
    });
  });

  test('goes on by a whole division where that lands within', () => {
    // 20.09 to 20 ± 0.04: 0.045 a side is 0.9 of a division of 0.05, so no cut; one whole gives 19.99.
    const turn = passOf('radius', 0.05, limits(19.96, 20.04));
    expect(turn(20.09, 1)).toMatchObject(
      close({ advance: 0.05, dial: 1.05, diameterAfter: 19.99, last: true }),
    );
  });

  test('takes a bore the other way', () => {
    // 19.91 to 20 ± 0.04 on the same dial: 19.91 + 0.1 = 20.01.
    const bore = passOf('radius', 0.05, limits(19.96, 20.04, 'inside'));
    expect(bore(19.91, 1)).toMatchObject(
      close({ advance: 0.05, diameterAfter: 20.01, last: true }),
    );
  });
});

test('cut as told, every size is made whose limits are wider than half a division', () => {
  const division = fc.constantFrom(0.01, 0.02, 0.0254, 0.05, 0.1);
  const reads = fc.constantFrom('diameter' as const, 'radius' as const);
  fc.assert(
    fc.property(
      reads,
      division,
      fc.integer({ min: 5, max: 200 }),
      fc.integer({ min: 20_200, max: 40_000 }),
      (dial, graduation, spare, start) => {
        // The narrowest interval in which marks half a division apart always have one, and a little.
        const onDiameter = dial === 'radius' ? 2 * graduation : graduation;
        const width = (onDiameter / 2) * (1 + spare / 100);
        const pass = passOf(dial, graduation, {
          lower: mm(20 - width / 2),
          upper: mm(20 + width / 2),
        });
        let at = { size: start / 1000, dial: 0 };
        for (let cuts = 0; cuts < 60 && at.size > 20 + width / 2; cuts++) {
          const next = pass(at.size, at.dial);
          at = { size: next.diameterAfter, dial: next.dial };
        }
        expect(Math.abs(at.size - 20)).toBeLessThanOrEqual(width / 2 + 1e-5);
      },
    ),
    { seed: 20_261_125, numRuns: 60 },
  );
});

test('a card without a cross dial is taken to read the radius in hundredths', () => {
  const metric = cardNamed('metric-lathe');
  const { crossReads, crossDivision, ...values } = metric.values;
  expect([crossReads, crossDivision]).toEqual(['diameter', 0.02]);
  const job = jobOf(smallFlow([tell('a')]), {}, { ...metric, values });
  expect(job.world.card).toEqual({ crossReads: 'radius', crossDivision: 0.01 });
});

/** Numbers to nine decimals; sums of hundredths are never exact. */
function close(wanted: Readonly<Record<string, number | boolean>>): Record<string, unknown> {
  return Object.fromEntries(
    Object.entries(wanted).map(([key, value]) => [
      key,
      typeof value === 'number' ? expect.closeTo(value, 9) : value,
    ]),
  );
}
