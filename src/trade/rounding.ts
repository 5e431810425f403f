/** Rounds to a dial's graduation or a gauge's resolution. */

/** Numbers this near to a whole count as whole, so that 0.6 ÷ 0.02 is 30 and not 29.999. */
const WHOLE_WITHIN = 1e-6;

function snapped(ratio: number): number {
  const whole = Math.round(ratio);
  return Math.abs(ratio - whole) < WHOLE_WITHIN ? whole : ratio;
}

/** Whole steps in `value`, rounded down. */
export function stepsDown(value: number, step: number): number {
  return Math.floor(snapped(value / step));
}

/** Whole steps in `value`, rounded up. */
export function stepsUp(value: number, step: number): number {
  return Math.ceil(snapped(value / step));
}

/** Whole steps nearest to `value`; a half goes to the even step. */
export function stepsHalfEven(value: number, step: number): number {
  const ratio = snapped(value / step);
  const low = Math.floor(ratio);
  const rest = ratio - low;
  if (Math.abs(rest - 0.5) > WHOLE_WITHIN) return Math.round(ratio);
  return low % 2 === 0 ? low : low + 1;
}
