/** What every tolerance class keeps, whatever the size. */

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { englishLanguage, wordedIn } from '../../../src/texts/index.ts';
import { deviationByFormula } from '../../../src/trade/fits/deviation-formula.ts';
import { classDeviations, delta, fundamental } from '../../../src/trade/fits/deviations.ts';
import { fineSteps, mainSteps } from '../../../src/trade/fits/steps.ts';
import { gradeByFormula, gradeOf } from '../../../src/trade/fits/tolerance-grade.ts';
import { faultOf } from '../asking.ts';

const settings = { seed: 286 };
const size = fc.double({ min: 0.01, max: 500, noNaN: true });
const grade = fc.integer({ min: 5, max: 13 });
const letters = [
  'a',
  'b',
  'c',
  'd',
  'e',
  'f',
  'g',
  'h',
  'm',
  'n',
  'p',
  'r',
  's',
  'u',
  'x',
  'z',
  'zc',
];

function limits(at: number, name: string) {
  const found = classDeviations(at, name);
  if ('fault' in found) throw new Error(wordedIn(englishLanguage, found.fault));
  return found;
}

describe('tolerance classes', () => {
  it('are exactly as wide as their grade, holes and shafts alike', () => {
    fc.assert(
      fc.property(size, grade, fc.constantFrom(...letters), (at, number, letter) => {
        for (const name of [`${letter}${number}`, `${letter.toUpperCase()}${number}`]) {
          const { upper, lower } = limits(at, name);
          expect(upper - lower).toBeCloseTo(gradeOf(at, number) ?? Number.NaN, 9);
        }
      }),
      settings,
    );
  });

  it('grow with the grade and with the size', () => {
    fc.assert(
      fc.property(size, size, grade, (one, other, number) => {
        const [small, large] = [Math.min(one, other), Math.max(one, other)];
        expect(gradeOf(small, number)).toBeLessThanOrEqual(gradeOf(large, number) ?? 0);
        if (number > 5) expect(gradeOf(one, number - 1)).toBeLessThan(gradeOf(one, number) ?? 0);
      }),
      settings,
    );
  });

  it('stand in the order of their letters', () => {
    fc.assert(
      fc.property(size, (at) => {
        const lows = letters.map((letter) => limits(at, `${letter}7`).lower);
        expect([...lows].sort((a, b) => a - b)).toEqual(lows);
      }),
      settings,
    );
  });

  it('mirror A to H holes on a to h shafts', () => {
    fc.assert(
      fc.property(
        size,
        grade,
        fc.constantFrom('a', 'c', 'd', 'e', 'f', 'g', 'h'),
        (at, number, letter) => {
          const [shaft, hole] = [
            limits(at, `${letter}${number}`),
            limits(at, `${letter.toUpperCase()}${number}`),
          ];
          expect([hole.lower, hole.upper]).toEqual(
            [0 - shaft.upper, 0 - shaft.lower].map((one) => one + 0),
          );
        },
      ),
      settings,
    );
  });

  it('give the same fit hole-based as shaft-based: H7/p6 as P7/h6 (the Δ rule)', () => {
    const closeSize = fc.double({ min: 3.001, max: 500, noNaN: true });
    const pair = fc.constantFrom<readonly [string, number]>(
      ['k', 6],
      ['k', 7],
      ['k', 8],
      ['m', 7],
      ['m', 8],
      ['n', 6],
      ['n', 7],
      ['n', 8],
      ['p', 6],
      ['p', 7],
      ['r', 7],
      ['s', 7],
      ['u', 7],
      ['x', 7],
    );
    fc.assert(
      fc.property(closeSize, pair, (at, [letter, number]) => {
        const hole = limits(at, `H${number}`);
        const shaft = limits(at, `${letter}${number - 1}`);
        const otherHole = limits(at, `${letter.toUpperCase()}${number}`);
        const otherShaft = limits(at, `h${number - 1}`);
        expect(otherHole.upper - otherShaft.lower).toBeCloseTo(hole.upper - shaft.lower, 9);
        expect(otherHole.lower - otherShaft.upper).toBeCloseTo(hole.lower - shaft.upper, 9);
      }),
      settings,
    );
  });

  it('have no Δ up to 3 mm and one grade less the finer one above', () => {
    expect(delta(3, 7)).toBe(0);
    expect(delta(30, 6)).toBe(4);
    expect(delta(30, 8)).toBe(12);
  });
});

describe('the formulas beside the tables', () => {
  // Worked out by hand in the notes on ISO 286-1: 8.67, 21.69, 7.33, 11.72 before rounding.
  it.each([
    [3, 7, 9, 10],
    [3, 9, 22, 25],
    [6, 6, 7, 8],
    [6, 7, 12, 12],
    [30, 7, 21, 21],
    [80, 8, 46, 46],
    [250, 9, 115, 115],
  ])('at %d mm IT%d is %d µm by formula and %d in the table', (at, number, formula, table) => {
    expect(gradeByFormula(at, number)).toBe(formula);
    expect(gradeOf(at, number)).toBe(table);
  });

  it('miss the table of grades in 15 of 117 cells, by a sixth at most', () => {
    const cells = mainSteps.flatMap((at) =>
      [5, 6, 7, 8, 9, 10, 11, 12, 13].map((number) => {
        const [formula, table] = [gradeByFormula(at, number) ?? 0, gradeOf(at, number) ?? 0];
        return Math.abs(formula - table) / table;
      }),
    );
    expect(cells.filter((off) => off > 0)).toHaveLength(15);
    expect(Math.max(...cells)).toBeLessThan(0.17);
  });

  it.each(['a', 'b', 'd', 'e', 'f', 'g', 'n', 'v', 'y'])(
    '%s comes out of its formula within a twentieth or 1.5 µm above 3 mm',
    (letter) => {
      for (const at of fineSteps.slice(1)) {
        const table = fundamental(letter, at);
        if (Number.isNaN(table)) continue;
        const formula = deviationByFormula(letter, at) ?? Number.NaN;
        expect(Math.abs(formula - table)).toBeLessThanOrEqual(Math.max(1.5, 0.05 * table));
      }
    },
  );
});

describe('classes that do not exist', () => {
  it.each([
    ['Q7', 'no tolerance class'],
    ['H4', 'grades 5 to 13'],
    ['Hg7', 'no tolerance class'],
    ['t6', 'gives no t6'],
    ['K9', 'gives no K9'],
    ['j9', 'gives no j9'],
  ])('%s at 20 mm is refused: %s', (name, told) => {
    expect(faultOf('limits-of-size', { size: 20, class: name })).toContain(told);
  });

  it('tells a shaft written where the hole belongs', () => {
    expect(faultOf('fit', { size: 20, hole: 'h7', shaft: 'g6' })).toContain('hole in capitals');
  });
});
