/** Limits and fits against printed tables, at both ends of every size step. */

import { describe, expect, it } from 'vitest';
import { englishLanguage, wordedIn } from '../../src/texts/index.ts';
import { classDeviations } from '../../src/trade/fits/deviations.ts';
import { fineSteps, mainSteps, type PrintedClass, printedFine, printedMain } from './fit-table.ts';
import { type Published, type PublishedWord, published, publishedWords } from './published.ts';

/** mm above a bound: the first size of the next step. */
const JUST_OVER = 0.001;

function checked(name: string, size: number, wanted: string): void {
  const found = classDeviations(size, name);
  if ('fault' in found) throw new Error(wordedIn(englishLanguage, found.fault));
  expect(`${size} ${name}: ${found.upper}/${found.lower}`).toBe(`${size} ${name}: ${wanted}`);
}

/** The first and the last size of each step that a line has. */
function lineChecked([name, firstUpTo, deviations]: PrintedClass, steps: readonly number[]): void {
  const first = steps.indexOf(firstUpTo);
  expect(first).toBeGreaterThanOrEqual(0);
  deviations.split(' ').forEach((wanted, index) => {
    checked(name, steps[first + index] ?? Number.NaN, wanted);
    checked(name, (steps[first + index - 1] ?? 0) + JUST_OVER, wanted);
  });
}

describe('limit deviations, as printed', () => {
  it.each(printedMain.map((line) => [...line] as const))(
    '%s from the step up to %d mm on is %s [%s]',
    (...line) => lineChecked(line, mainSteps),
  );
  it.each(printedFine.map((line) => [...line] as const))(
    '%s from the fine step up to %d mm on is %s [%s]',
    (...line) => lineChecked(line, fineSteps),
  );
});

const JIS = 'JIS B 0401 (1999), regularly used fits, printed';
const HOUSING = 'Bearing housing tolerances K6 to M7, N6 to P7, printed';
const DERIVED = 'derived from ISO 286-1 tables as in Narayana et al., Machine Drawing';

type Case = readonly [size: number, name: string, upper: number, lower: number, source: string];

const cases: readonly Case[] = [
  [25, 'H7', 25.021, 25, JIS],
  [25, 'g6', 24.993, 24.98, JIS],
  [20, 'h6', 20, 19.987, JIS],
  [40, 'k6', 40.018, 40.002, JIS],
  [30, 'f7', 29.98, 29.959, JIS],
  [50, 'p6', 50.042, 50.026, JIS],
  [10, 'h9', 10, 9.964, JIS],
  [12, 'e8', 11.968, 11.941, JIS],
  [60, 'm6', 60.03, 60.011, JIS],
  [45, 'n6', 45.033, 45.017, JIS],
  [35, 'js6', 35.008, 34.992, JIS],
  [70, 'r6', 70.062, 70.043, DERIVED],
  [28, 's6', 28.048, 28.035, JIS],
  [8, 'g6', 7.995, 7.986, JIS],
  [16, 'd9', 15.95, 15.907, JIS],
  [100, 'h7', 100, 99.965, DERIVED],
  [150, 'k6', 150.028, 150.003, DERIVED],
  [200, 'f7', 199.95, 199.904, DERIVED],
  [3, 'm6', 3.008, 3.002, JIS],
  [40, 'H8', 40.039, 40, JIS],
  [80, 'H7', 80.03, 80, JIS],
  [25, 'K7', 25.006, 24.985, HOUSING],
  [40, 'N7', 39.992, 39.967, HOUSING],
  [40, 'P7', 39.983, 39.958, HOUSING],
  [60, 'M7', 60, 59.97, HOUSING],
  [30, 'F8', 30.053, 30.02, JIS],
  [18, 'G7', 18.024, 18.006, JIS],
  [50, 'E9', 50.112, 50.05, JIS],
  [16, 'JS7', 16.009, 15.991, 'Technical Reference p. 281, metric hole tolerances'],
  [63, 'D9', 63.174, 63.1, DERIVED],
  [120, 'H11', 120.22, 120, DERIVED],
];

published(
  'limits of size',
  cases.flatMap(([size, name, upper, lower, source]): Published[] => [
    [`limits-of-size size=${size} class=${name}`, upper, 'mm', 1e-7, source],
    [`limits-of-size.lower size=${size} class=${name}`, lower, 'mm', 1e-7, source],
  ]),
);

type Pair = readonly [string, most: number, least: number, kind: string];

const pairs: readonly Pair[] = [
  ['size=25 hole=H7 shaft=g6', 41, 7, 'clearance'],
  ['size=40 hole=H7 shaft=k6', 23, -18, 'transition'],
  ['size=50 hole=H7 shaft=p6', -1, -42, 'interference'],
  ['size=30 hole=H8 shaft=f7', 74, 20, 'clearance'],
  ['size=60 hole=H7 shaft=s6', -23, -72, 'interference'],
  ['size=20 hole=H7 shaft=h6', 34, 0, 'clearance'],
  ['size=40 hole=H7 shaft=n6', 8, -33, 'transition'],
];

published(
  'fits',
  pairs.flatMap(([asked, most, least]): Published[] => [
    [`fit ${asked}`, most, 'um', 1e-6, DERIVED],
    [`fit.least ${asked}`, least, 'um', 1e-6, DERIVED],
  ]),
);
publishedWords(
  'fits',
  pairs.map(([asked, , , kind]): PublishedWord => [`fit ${asked}`, kind, DERIVED]),
);

const PRINTED_GRADES =
  'ISO fundamental tolerances, printed table (Pfeffer); 400 to 500: from memory';

/** µm by grade, a value a main step. */
const grades: Readonly<Record<number, string>> = {
  5: '4 5 6 8 9 11 13 15 18 20 23 25 27',
  6: '6 8 9 11 13 16 19 22 25 29 32 36 40',
  7: '10 12 15 18 21 25 30 35 40 46 52 57 63',
  8: '14 18 22 27 33 39 46 54 63 72 81 89 97',
  9: '25 30 36 43 52 62 74 87 100 115 130 140 155',
  10: '40 48 58 70 84 100 120 140 160 185 210 230 250',
  11: '60 75 90 110 130 160 190 220 250 290 320 360 400',
  12: '100 120 150 180 210 250 300 350 400 460 520 570 630',
  13: '140 180 220 270 330 390 460 540 630 720 810 890 970',
};

published(
  'standard tolerances',
  Object.entries(grades).flatMap(([grade, row]) =>
    row
      .split(' ')
      .map(
        (value, index): Published => [
          `tolerance-grade size=${mainSteps[index]} grade=${grade}`,
          Number(value),
          'um',
          1e-6,
          PRINTED_GRADES,
        ],
      ),
  ),
);

const COPIES = 'ISO 2768-1:1989, two printed copies';
const ANGLES = 'from memory: ISO 2768-1:1989 table 3';

published('general tolerances', [
  ['general-tolerance size=25 class=m', 0.2, 'mm', 1e-9, COPIES],
  ['general-tolerance size=30 class=f', 0.1, 'mm', 1e-9, COPIES],
  ['general-tolerance size=31 class=f', 0.15, 'mm', 1e-9, COPIES],
  ['general-tolerance size=120 class=m', 0.3, 'mm', 1e-9, COPIES],
  ['general-tolerance size=121 class=m', 0.5, 'mm', 1e-9, COPIES],
  ['general-tolerance size=2 class=c', 0.2, 'mm', 1e-9, COPIES],
  ['general-tolerance size=6 class=c', 0.3, 'mm', 1e-9, COPIES],
  ['general-tolerance size=5 class=v', 0.5, 'mm', 1e-9, COPIES],
  ['general-tolerance size=900 class=c', 2, 'mm', 1e-9, COPIES],
  ['general-tolerance size=3500 class=v', 8, 'mm', 1e-9, COPIES],
  ['general-tolerance size=2 class=m kind=corner', 0.2, 'mm', 1e-9, COPIES],
  ['general-tolerance size=5 class=v kind=corner', 1, 'mm', 1e-9, COPIES],
  ['general-tolerance size=10 class=f kind=corner', 1, 'mm', 1e-9, COPIES],
  ['general-angle-tolerance shorterLeg=10 class=m', 1, 'deg', 1e-9, ANGLES],
  ['general-angle-tolerance shorterLeg=50 class=m', 30, 'arcmin', 1e-9, ANGLES],
  ['general-angle-tolerance shorterLeg=51 class=m', 20, 'arcmin', 1e-9, ANGLES],
  ['general-angle-tolerance shorterLeg=9 class=c', 90, 'arcmin', 1e-9, ANGLES],
  ['general-angle-tolerance shorterLeg=500 class=v', 20, 'arcmin', 1e-9, ANGLES],
]);
