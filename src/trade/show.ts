/** Writes numbers into a working line: short, and never so short that the sum looks wrong. */

/** A number with at most `digits` significant figures, whole numbers in full: 357, 0.0857, 1898.8. */
export function show(value: number, digits = 5): string {
  if (Number.isInteger(value) && Math.abs(value) < 1e9) return String(value);
  return String(Number(value.toPrecision(digits)));
}

/** A list of numbers: "57.6, 53.2, 50.3". */
export function showList(values: readonly number[], digits = 5): string {
  return values.map((value) => show(value, digits)).join(', ');
}
