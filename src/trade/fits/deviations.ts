/** The limits of a tolerance class such as H7 or g6, by the tables and rules of ISO 286-1. */

import { type Worded, worded } from '../../texts/index.ts';
import { byFineStep, byMainStep, holeJ, shaftJ } from './shaft-table.ts';
import { fineSteps, largestSize, mainSteps, stepOf } from './steps.ts';
import { gradeOf } from './tolerance-grade.ts';

/** Deviations from the nominal size in µm. */
export interface Deviations {
  readonly upper: number;
  readonly lower: number;
}

export interface ToleranceClass {
  readonly letter: string;
  readonly grade: number;
  readonly hole: boolean;
}

type Found<T> = T | { readonly fault: Worded };

const CLASS = /^([a-z]{1,2})([0-9]{1,2})$/i;

/** Reads "H7" or "js6". Capitals are holes, small letters are shafts. */
export function parseClass(text: string): Found<ToleranceClass> {
  const [, letter = '', digits = ''] = CLASS.exec(text.trim()) ?? [];
  const known = [...Object.keys(byMainStep), ...Object.keys(byFineStep), 'j', 'js'];
  if (!known.includes(letter.toLowerCase())) {
    return {
      fault: worded`"${text}" is no tolerance class; write a letter and a grade, as H7 or g6.`,
    };
  }
  const grade = Number(digits);
  if (grade < 5 || grade > 13) {
    return { fault: worded`"${text}" asks for grade ${digits}; this table holds grades 5 to 13.` };
  }
  const hole = letter === letter.toUpperCase();
  return { letter: letter.toLowerCase(), grade, hole };
}

/** The tabulated fundamental deviation of a shaft letter in µm, without its sign; NaN where none. */
export function fundamental(letter: string, size: number): number {
  const main = byMainStep[letter];
  if (main !== undefined) return main[stepOf(size, mainSteps)] ?? Number.NaN;
  return byFineStep[letter]?.[stepOf(size, fineSteps)] ?? Number.NaN;
}

const isClearanceLetter = (letter: string) => letter <= 'h';

/** Added to the deviation of close holes so that H7/p6 and P7/h6 fit alike; 0 up to 3 mm. */
export function delta(size: number, grade: number): number {
  if (size <= 3) return 0;
  return (gradeOf(size, grade) ?? Number.NaN) - (gradeOf(size, grade - 1) ?? Number.NaN);
}

function shaftDeviations({ letter, grade }: ToleranceClass, size: number, it: number): Deviations {
  const value = fundamental(letter, size);
  if (isClearanceLetter(letter)) return { upper: -value, lower: -value - it };
  if (letter === 'j') {
    const lower = -(shaftJ[grade]?.[stepOf(size, mainSteps)] ?? Number.NaN);
    return { upper: lower + it, lower };
  }
  const lower = letter === 'k' && grade > 7 ? 0 : value;
  return { upper: lower + it, lower };
}

/** The coarser K and N holes, and M6 over 250 to 315 mm, which the rule does not give. */
function holeException({ letter, grade }: ToleranceClass, size: number): number | undefined {
  if (letter === 'k' && grade > 8) return size <= 3 ? 0 : Number.NaN;
  if (letter === 'n' && grade > 8) return size <= 3 ? -4 : 0;
  if (letter === 'm' && grade === 6 && size > 250 && size <= 315) return -9;
  if (letter === 'j') return holeJ[grade]?.[stepOf(size, mainSteps)] ?? Number.NaN;
  return undefined;
}

function holeDeviations(wanted: ToleranceClass, size: number, it: number): Deviations {
  const { letter, grade } = wanted;
  const value = fundamental(letter, size);
  if (isClearanceLetter(letter)) return { upper: value + it, lower: value };
  const closest = ['k', 'm', 'n'].includes(letter) ? 8 : 7;
  const upper = holeException(wanted, size) ?? -value + (grade <= closest ? delta(size, grade) : 0);
  return { upper, lower: upper - it };
}

function deviationsOf(wanted: ToleranceClass, size: number): Deviations {
  const it = gradeOf(size, wanted.grade) ?? Number.NaN;
  if (wanted.letter === 'js') return { upper: it / 2, lower: -it / 2 };
  return wanted.hole ? holeDeviations(wanted, size, it) : shaftDeviations(wanted, size, it);
}

/** The deviations of a class at a size in mm, or why there are none. */
export function classDeviations(size: number, text: string): Found<Deviations> {
  const wanted = parseClass(text);
  if ('fault' in wanted) return wanted;
  if (!(size > 0 && size <= largestSize)) {
    return { fault: worded`${size} mm is outside this table, which goes up to ${largestSize} mm.` };
  }
  const { upper, lower } = deviationsOf(wanted, size);
  if (Number.isNaN(upper)) {
    return {
      fault: worded`ISO 286 gives no ${text} at ${size} mm; take a neighbouring letter or grade.`,
    };
  }
  return { upper: upper + 0, lower: lower + 0 };
}
