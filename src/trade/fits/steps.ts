/** The size steps of ISO 286-1 up to 500 mm: over the lower bound, up to and including the upper. */

/** Upper bounds in mm of the main steps; tolerance grades and most letters use these. */
export const mainSteps = [3, 6, 10, 18, 30, 50, 80, 120, 180, 250, 315, 400, 500] as const;

/** Upper bounds in mm of the finer steps, for the letters a to c and r to zc. */
export const fineSteps = [
  3, 6, 10, 14, 18, 24, 30, 40, 50, 65, 80, 100, 120, 140, 160, 180, 200, 225, 250, 280, 315, 355,
  400, 450, 500,
] as const;

export const largestSize = 500;

/** Index of the step that holds this size in mm, or -1 outside 0 to 500 mm. */
export function stepOf(size: number, steps: readonly number[]): number {
  return size > 0 ? steps.findIndex((upTo) => size <= upTo) : -1;
}

/** The bounds of a step in mm; the first one starts at 1 mm for the formulas, as the standard does. */
export function boundsOf(index: number, steps: readonly number[]): readonly [number, number] {
  return [index === 0 ? 1 : (steps[index - 1] ?? 0), steps[index] ?? 0];
}

/** Geometric mean of the step in mm: the D of the standard's formulas. */
export function meanOf(index: number, steps: readonly number[]): number {
  const [low, high] = boundsOf(index, steps);
  return Math.sqrt(low * high);
}
