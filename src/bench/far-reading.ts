/** When a reading is so far from the expected one that it is questioned. Pure. */

/** Further off than two in a hundred, or than thirty of the last digit for small sizes. */
export function isFar(value: number, expected: number, decimals: number): boolean {
  return Math.abs(value - expected) > Math.max(0.02 * Math.abs(expected), 30 * 10 ** -decimals);
}
