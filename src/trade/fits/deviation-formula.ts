/** The formulas behind the fundamental deviations of shafts; shown beside the table, never instead of it. */

import { byFineStep } from './shaft-table.ts';
import { fineSteps, mainSteps, meanOf, stepOf } from './steps.ts';
import { gradeOf } from './tolerance-grade.ts';

type Formula = (mean: number, grade: (number: number) => number) => number;

const between =
  (one: Formula, other: Formula): Formula =>
  (mean, grade) =>
    Math.sqrt(one(mean, grade) * other(mean, grade));

const c: Formula = (mean) => (mean <= 40 ? 52 * mean ** 0.2 : 95 + 0.8 * mean);
const d: Formula = (mean) => 16 * mean ** 0.44;
const e: Formula = (mean) => 11 * mean ** 0.41;
const f: Formula = (mean) => 5.5 * mean ** 0.41;
const g: Formula = (mean) => 2.5 * mean ** 0.34;
const p: Formula = (_mean, grade) => grade(7) + 2.5;
const s: Formula = (mean, grade) => (mean <= 50 ? grade(8) + 2.5 : grade(7) + 0.4 * mean);

/**
 * µm, D in mm, a to g without the minus. Source: from memory: ISO 286-1:1988 annex. p is IT7 plus 0
 * to 5 and s is IT8 plus 1 to 4 up to 50 mm; the middle is taken here. j has no formula.
 */
const formulas: Readonly<Record<string, Formula>> = {
  a: (mean) => (mean <= 120 ? 265 + 1.3 * mean : 3.5 * mean),
  b: (mean) => (mean <= 160 ? 140 + 0.85 * mean : 1.8 * mean),
  c,
  cd: between(c, d),
  d,
  e,
  ef: between(e, f),
  f,
  fg: between(f, g),
  g,
  h: () => 0,
  k: (mean) => 0.6 * Math.cbrt(mean),
  m: (_mean, grade) => grade(7) - grade(6),
  n: (mean) => 5 * mean ** 0.34,
  p,
  r: between(p, s),
  s,
  t: (mean, grade) => grade(7) + 0.63 * mean,
  u: (mean, grade) => grade(7) + mean,
  v: (mean, grade) => grade(7) + 1.25 * mean,
  x: (mean, grade) => grade(7) + 1.6 * mean,
  y: (mean, grade) => grade(7) + 2 * mean,
  z: (mean, grade) => grade(7) + 2.5 * mean,
  za: (mean, grade) => grade(8) + 3.15 * mean,
  zb: (mean, grade) => grade(9) + 4 * mean,
  zc: (mean, grade) => grade(10) + 5 * mean,
};

/** The letter's values in the fine steps that make up the main step of this size. */
function splitOf(letter: string, main: number): readonly number[] {
  const [low, high] = [mainSteps[main - 1] ?? 0, mainSteps[main] ?? 0];
  return fineSteps.flatMap((upTo, index) =>
    upTo > low && upTo <= high ? [byFineStep[letter]?.[index] ?? Number.NaN] : [],
  );
}

/** D in mm: of the fine step where the standard splits the letter there, else of the main one. */
function meanFor(letter: string, size: number): number {
  const main = stepOf(size, mainSteps);
  const split = new Set(splitOf(letter, main)).size > 1;
  return split ? meanOf(stepOf(size, fineSteps), fineSteps) : meanOf(main, mainSteps);
}

/** The formula's value in µm for a shaft letter at a size in mm, not rounded; undefined for j and js. */
export function deviationByFormula(letter: string, size: number): number | undefined {
  const grade = (number: number) => gradeOf(size, number) ?? Number.NaN;
  return formulas[letter]?.(meanFor(letter, size), grade);
}
