/** How wide a standard tolerance is: the table of ISO 286-1, with its formula beside it. */

import { worded } from '../../texts/index.ts';
import { aCount, aLength } from '../inputs.ts';
import { lengthPart } from '../part.ts';
import type { Rule, RuleValues, Worked } from '../rule.ts';
import { show } from '../show.ts';
import { fault, numberOf } from '../values.ts';
import { gradeTable, unitsInGrade } from './grade-table.ts';
import { largestSize, mainSteps, meanOf, stepOf } from './steps.ts';

/** The tabulated tolerance in µm, or undefined outside 0 to 500 mm and IT4 to IT13. */
export function gradeOf(size: number, grade: number): number | undefined {
  return gradeTable[grade]?.[stepOf(size, mainSteps)];
}

/** The tolerance unit i in µm of the step that holds the size in mm: 0.45 ∛D + 0.001 D. */
export function toleranceUnit(size: number): number {
  const mean = meanOf(stepOf(size, mainSteps), mainSteps);
  return 0.45 * Math.cbrt(mean) + 0.001 * mean;
}

/** Rounds as the standard does: to 1 µm up to 100, to 5 µm up to 200, to 10 µm above. */
export function roundedAsStandard(micrometres: number): number {
  const to = micrometres <= 100 ? 1 : micrometres <= 200 ? 5 : 10;
  return Math.round(micrometres / to) * to;
}

/** From this grade on the standard takes ten times the grade five below. */
const TENFOLD_FROM = 11;

/** The formula's value in µm, rounded as the standard does; undefined outside IT5 to IT13. */
export function gradeByFormula(size: number, grade: number): number | undefined {
  const units = unitsInGrade[grade];
  if (units === undefined) return undefined;
  if (grade < TENFOLD_FROM) return roundedAsStandard(units * toleranceUnit(size));
  return 10 * (gradeOf(size, grade - 5) ?? Number.NaN);
}

function work(values: RuleValues): Worked {
  const [size, grade] = [numberOf(values, 'size'), numberOf(values, 'grade')];
  const micrometres = gradeOf(size, grade);
  const formula = gradeByFormula(size, grade);
  if (micrometres === undefined || formula === undefined) {
    return fault(
      worded`IT${grade} at ${show(size)} mm is outside this table; it holds IT5 to IT13.`,
    );
  }
  const units = unitsInGrade[grade] ?? 0;
  const raw = units * toleranceUnit(size);
  const same =
    formula === micrometres ? 'as tabulated' : worded`the table has ${micrometres} and rules`;
  return {
    ok: true,
    value: micrometres / 1000,
    working: worded`IT${grade} at ${show(size)} mm: ${units} × i ${show(toleranceUnit(size), 4)} µm = ${show(raw, 4)}, rounded ${formula}, ${same}: ${micrometres} µm`,
    parts: {
      byFormula: lengthPart(formula / 1000, "the formula's value, rounded as the standard rounds"),
    },
  };
}

export const toleranceGrade: Rule = {
  name: 'tolerance-grade',
  title: 'Width of a standard tolerance',
  topic: 'fits',
  inputs: [
    aLength('size', largestSize, 'nominal size'),
    aCount('grade', [5, 13], 'grade number: 7 for IT7'),
  ],
  output: {
    quantity: 'length',
    meaning: 'width of the tolerance',
    parts: { byFormula: 'length' },
  },
  formula:
    'i = 0.45 ∛D + 0.001 D µm, D the geometric mean of the size step; IT5…IT13 = 7, 10, 16, 25, 40, 64, 100, 160, 250 i, from IT11 on ten times the grade five below; the table rules',
  source: 'ISO 286-1 table 1; formula from memory: ISO 286-1 and Narayana et al., Machine Drawing',
  cautions: [],
  work,
};
