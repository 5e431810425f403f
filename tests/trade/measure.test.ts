/** Measures as people write them. */

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { parseMeasure, parseMeasures, type Quantity } from '../../src/trade/index.ts';

// Inches by the exact 25.4; worked out by hand.
const written: readonly (readonly [text: string, quantity: Quantity, base: number])[] = [
  ['25', 'length', 25],
  ['25mm', 'length', 25],
  ['1.5in', 'length', 38.1],
  ['1.5 in', 'length', 38.1],
  ['3/8in', 'length', 9.525],
  ['3/8"', 'length', 9.525],
  ['1 3/8in', 'length', 34.925],
  ['1-3/8 in', 'length', 34.925],
  ['1/64in', 'length', 0.396875],
  ['0.001in', 'length', 0.0254],
  ['5thou', 'length', 0.127],
  ['.5', 'length', 0.5],
  ['-0.02mm', 'length', -0.02],
  ['+3', 'length', 3],
  ['1.5e3', 'spindleSpeed', 1500],
  ['400 rpm', 'spindleSpeed', 400],
  ['90ft/min', 'surfaceSpeed', 27.432],
  ['68degF', 'temperature', 20],
  ['-40°F', 'temperature', -40],
  ['29.5°', 'angle', 29.5],
  ['75 %', 'percent', 75],
  ['20tpi', 'pitchCount', 20],
  ['207GPa', 'stress', 207_000],
];

describe('a written measure', () => {
  it.each(written)('%s as %s is %d in base units', (text, quantity, base) => {
    const measure = parseMeasure(text, quantity);
    expect(measure.ok && measure.value).toBeCloseTo(base, 12);
  });

  it.each([
    ['4 furlong', 'length', 'has the unit "furlong"; allowed here: mm, in, thou'],
    ['wide', 'length', 'does not start with a number'],
    ['', 'length', 'does not start with a number'],
    ['1/0in', 'length', 'divides by nothing'],
    ['3in', 'count', 'allowed here: no unit'],
  ] as const)('"%s" as %s is refused', (text, quantity, sentence) => {
    const measure = parseMeasure(text, quantity);
    expect(measure.ok ? '' : measure.fault).toContain(sentence);
  });

  it('reads any fraction of an inch exactly as 25.4 × top ÷ bottom', () => {
    const parts = [fc.integer({ min: 0, max: 40 }), fc.integer({ min: 1, max: 63 })] as const;
    fc.assert(
      fc.property(...parts, fc.constantFrom(2, 4, 8, 16, 32, 64), (whole, top, bottom) => {
        const measure = parseMeasure(`${whole} ${top}/${bottom}in`, 'length');
        // 1/64 in is 0.396875 mm, a number that binary and decimal hold to the last digit needed.
        const sixtyFourths = whole * 64 + (top * 64) / bottom;
        expect(measure).toEqual({ ok: true, value: (sixtyFourths * 396_875) / 1e6 });
      }),
      { seed: 5 },
    );
  });

  it('lets the last unit of a list count for the bare numbers before it', () => {
    expect(parseMeasures('1,2, 3in', 'length')).toEqual({ ok: true, value: [25.4, 50.8, 76.2] });
    expect(parseMeasures('10mm,1in', 'length')).toEqual({ ok: true, value: [10, 25.4] });
    expect(parseMeasures('70,fast,450', 'spindleSpeed')).toMatchObject({ ok: false });
  });
});
