/**
 * Values as words and figures. Sources: the words of plain English; ISO 80000-1 for the space before a unit and none
 * before the degree sign, and for the minus sign; round half to even as in ISO 80000-1 annex B rule A (from memory).
 */
import { describe, expect, it } from 'vitest';
import {
  type Manner,
  sayDigits,
  sayFraction,
  sayNumber,
  showFraction,
  showNumber,
} from '../../src/words/index.ts';

type Row = readonly [value: number, unit: string, decimals: number, words: string, manner?: Manner];

describe('sayNumber', () => {
  const rows: readonly Row[] = [
    [24.95, 'mm', 2, 'twenty-four point nine five millimetres'],
    [24.9, 'mm', 2, 'twenty-four point nine millimetres'],
    [25, 'mm', 2, 'twenty-five millimetres'],
    [1, 'mm', 2, 'one millimetre'],
    [-1, 'mm', 2, 'minus one millimetre'],
    [1.5, 'mm', 1, 'one point five millimetres'],
    [0, 'mm', 2, 'zero millimetres'],
    [-0.02, 'mm', 2, 'minus zero point zero two millimetres'],
    [-0.001, 'mm', 2, 'zero millimetres'],
    [450, 'rpm', 0, 'four hundred and fifty'],
    [450, 'rev/min', 0, 'four hundred and fifty'],
    [1400, 'rpm', 0, 'one thousand four hundred'],
    [450, 'rpm', 0, 'four hundred and fifty revs a minute', { unit: true }],
    [24.95, 'mm', 2, 'twenty-four point nine five', { unit: false }],
    [0.98, 'in', 3, 'zero point nine eight inches'],
    [0.98, 'in', 3, 'nine hundred and eighty thou', { inThou: true }],
    [0.025, 'in', 4, 'twenty-five thou', { inThou: true }],
    [0.0255, 'in', 4, 'twenty-five point five thou', { inThou: true }],
    [-0.001, 'in', 3, 'minus one thou', { inThou: true }],
    [0.9999, 'in', 3, 'one inch', { inThou: true }],
    [1.025, 'in', 3, 'one point zero two five inches', { inThou: true }],
    [0.98, 'mm', 2, 'zero point nine eight millimetres', { inThou: true }],
    [5, 'um', 0, 'five microns'],
    [7.5, 'deg', 1, 'seven point five degrees'],
    [30, 'm/min', 0, 'thirty metres a minute'],
    [1, 'm/min', 0, 'one metre a minute'],
    [0.2, 'mm/rev', 2, 'zero point two millimetres a rev'],
    [0.005, 'in/rev', 3, 'zero point zero zero five inches a rev'],
    [120, 'mm/min', 0, 'one hundred and twenty millimetres a minute'],
    [1.5, 'min', 1, 'one point five minutes'],
    [30, 's', 0, 'thirty seconds'],
    [1.5, 'kW', 1, 'one point five kilowatts'],
    [12, 'Nm', 0, 'twelve newton metres'],
    [50, '%', 0, 'fifty percent'],
    [3, 'count', 0, 'three'],
    [3, '', 0, 'three'],
    [3, 'furlong', 0, 'three furlong'],
    [1005, 'N', 0, 'one thousand and five newtons'],
    [9.5, 'mm', 2, 'nine point five millimetres', { radio: true }],
    [Number.NaN, 'mm', 2, 'no number'],
    [Number.POSITIVE_INFINITY, 'mm', 2, 'no number'],
  ];
  for (const [value, unit, decimals, words, manner] of rows) {
    it(`${value} ${unit} to ${decimals} is "${words}"`, () => {
      expect(sayNumber(value, unit, decimals, manner)).toBe(words);
    });
  }
});

describe('rounding', () => {
  const rows: readonly (readonly [value: number, decimals: number, shown: string])[] = [
    [24.945, 2, '24.94'],
    [24.955, 2, '24.96'],
    [1.005, 2, '1.00'],
    [1.015, 2, '1.02'],
    [0.125, 2, '0.12'],
    [0.135, 2, '0.14'],
    [2.5, 0, '2'],
    [3.5, 0, '4'],
    [-2.5, 0, '−2'],
    [2.500001, 0, '3'],
    [999.996, 2, '1000.00'],
    [0.1 + 0.2, 2, '0.30'],
    [1e-9, 3, '0.000'],
    [-1e-9, 3, '0.000'],
    [1e21, 0, '1000000000000000000000'],
  ];
  it.each(rows)(
    '%d to %d decimals is %s: an exact half goes to the even digit',
    (value, decimals, shown) => {
      expect(showNumber(value, '', decimals)).toBe(shown);
    },
  );
});

describe('sayDigits', () => {
  const rows: readonly Row[] = [
    [24.95, 'mm', 2, 'two four point nine five millimetres'],
    [24.9, 'mm', 2, 'two four point nine zero millimetres'],
    [-0.02, 'mm', 2, 'minus zero point zero two millimetres'],
    [450, 'rpm', 0, 'four five zero'],
    [0.98, 'in', 3, 'zero point nine eight zero inches'],
    [1, 'mm', 0, 'one millimetre'],
    [93.45, 'mm', 2, 'niner tree point fower fife millimetres', { radio: true }],
    [Number.NaN, 'mm', 2, 'no number'],
  ];
  for (const [value, unit, decimals, words, manner] of rows) {
    it(`${value} ${unit} to ${decimals} is "${words}"`, () => {
      expect(sayDigits(value, unit, decimals, manner)).toBe(words);
    });
  }
});

describe('showNumber', () => {
  const rows: readonly (readonly [number, string, number, string])[] = [
    [24.95, 'mm', 2, '24.95\u00a0mm'],
    [24.9, 'mm', 2, '24.90\u00a0mm'],
    [-0.02, 'mm', 2, '−0.02\u00a0mm'],
    [450, 'rev/min', 0, '450\u00a0rpm'],
    [0.98, 'in', 3, '0.980\u00a0in'],
    [5, 'um', 0, '5\u00a0µm'],
    [7.5, 'deg', 1, '7.5°'],
    [20, 'degC', 0, '20\u00a0°C'],
    [50, '%', 0, '50\u00a0%'],
    [12, 'Nm', 0, '12\u00a0N·m'],
    [3, 'count', 0, '3'],
    [Number.NaN, 'mm', 2, '–'],
  ];
  it.each(rows)('%d %s to %d is "%s"', (value, unit, decimals, shown) => {
    expect(showNumber(value, unit, decimals)).toBe(shown);
  });
});

describe('inches as fractions', () => {
  const rows: readonly (readonly [number, string | null, string | null])[] = [
    [0.5, 'a half of an inch', '1/2\u00a0in'],
    [0.25, 'a quarter of an inch', '1/4\u00a0in'],
    [0.75, 'three quarters of an inch', '3/4\u00a0in'],
    [0.125, 'an eighth of an inch', '1/8\u00a0in'],
    [0.21875, 'seven thirty-seconds of an inch', '7/32\u00a0in'],
    [0.984375, 'sixty-three sixty-fourths of an inch', '63/64\u00a0in'],
    [1.375, 'one and three eighths inches', '1\u00a03/8\u00a0in'],
    [-1.5, 'minus one and a half inches', '−1\u00a01/2\u00a0in'],
    [1, 'one inch', '1\u00a0in'],
    [2, 'two inches', '2\u00a0in'],
    [0, 'zero inches', '0\u00a0in'],
    [0.1, null, null],
    [1 / 128, null, null],
    [Number.NaN, null, null],
  ];
  it.each(rows)('%d is "%s", shown %s', (value, said, shown) => {
    expect([sayFraction(value), showFraction(value)]).toEqual([said, shown]);
  });
});
