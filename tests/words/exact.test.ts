/** Exact fractions. Expected values by hand; rounding as in IEEE 754 roundTiesToEven, on decimals. */
import { describe, expect, it } from 'vitest';
import {
  decimalsOf,
  exact,
  fromDecimalText,
  fromNumber,
  toDecimalText,
  toNumber,
} from '../../src/words/exact.ts';

describe('an exact fraction', () => {
  it('is in lowest terms', () => {
    expect(exact(14, 64)).toEqual({ top: 7n, bottom: 32n });
    expect(exact(-6, 4)).toEqual({ top: -3n, bottom: 2n });
    expect(exact(0, 5)).toEqual({ top: 0n, bottom: 1n });
  });

  it.each([
    ['24.95', 499n, 20n],
    ['-0.02', -1n, 50n],
    ['.5', 1n, 2n],
    ['5.', 5n, 1n],
  ])('reads %s', (text, top, bottom) => {
    expect(fromDecimalText(text)).toEqual({ top, bottom });
  });

  it.each(['', '.', '-', '1e3', '1.2.3', '--1', ' 1', '1,2'])('refuses "%s"', (text) => {
    expect(fromDecimalText(text)).toBeNull();
  });

  it('takes a double for the decimal it shows', () => {
    expect(fromNumber(24.945)).toEqual(exact(24945, 1000));
    expect(fromNumber(1e-7)).toEqual(exact(1, 10_000_000));
    expect(fromNumber(Number.NaN)).toBeNull();
    expect(toNumber(exact(7, 32))).toBe(0.21875);
  });

  it.each([
    [1, 3, null],
    [1, 64, 6],
    [1, 20, 2],
    [5, 1, 0],
  ])('%d/%d has %s decimals', (top, bottom, decimals) => {
    expect(decimalsOf(exact(top, bottom))).toBe(decimals);
  });

  it.each([
    [5, 10, 0, '0'],
    [15, 10, 0, '2'],
    [25, 10, 0, '2'],
    [-15, 10, 0, '-2'],
    [-5, 10, 0, '0'],
    [1, 3, 3, '0.333'],
    [2, 3, 3, '0.667'],
    [1, 8, 2, '0.12'],
    [9999, 1000, 2, '10.00'],
  ])('%d/%d to %d decimals is %s', (top, bottom, decimals, text) => {
    expect(toDecimalText(exact(top, bottom), decimals)).toBe(text);
  });
});
