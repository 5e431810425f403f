/** Judges a reading: may it be taken at all, and where does it stand against its limits? */

import type { Quantity } from '../trade/index.ts';
import type { Step, StepOf } from './flow-shape.ts';
import type { Numbers, Readings } from './numbers.ts';

/** `rework`: material can still be taken off. `lost`: too much is gone. */
export type Verdict = 'within' | 'rework' | 'lost';

export interface Limits {
  readonly lower: number;
  readonly upper: number;
}

/** Readings are kept to a hundredth of a micrometre, so that 24.8 and 24.799999 are one size. */
const resolution = 1e-5;

/** The plausible range of a step's reading in base units; nothing when it cannot be worked out yet. */
export function plausibleRange(
  step: Step,
  numbers: Numbers,
  readings: Readings,
): Limits | undefined {
  if (!('reading' in step)) return undefined;
  const quantity = step.reading.quantity as Quantity;
  const lower = numbers.number(step.reading.min, readings, quantity);
  const upper = numbers.number(step.reading.max, readings, quantity);
  return lower === undefined || upper === undefined ? undefined : { lower, upper };
}

/** False for anything that is no finite number inside the plausible range. */
export function plausible(
  step: Step,
  value: number,
  numbers: Numbers,
  readings: Readings,
): boolean {
  const range = plausibleRange(step, numbers, readings);
  return (
    range !== undefined &&
    Number.isFinite(value) &&
    value >= range.lower - resolution &&
    value <= range.upper + resolution
  );
}

/** The limits a step judges its reading by. */
export function limitsOf(
  step: StepOf<'inspect'> | StepOf<'passes'>,
  numbers: Numbers,
  readings: Readings,
): Limits | undefined {
  const quantity = step.reading.quantity as Quantity;
  const lower = numbers.number(step.lower, readings, quantity);
  const upper = numbers.number(step.upper, readings, quantity);
  return lower === undefined || upper === undefined ? undefined : { lower, upper };
}

export function verdictOf(
  step: Step,
  value: number,
  numbers: Numbers,
  readings: Readings,
): Verdict | undefined {
  if (step.kind !== 'inspect' && step.kind !== 'passes') return undefined;
  const limits = limitsOf(step, numbers, readings);
  return limits && judge(value, limits, step.side);
}

/** A size on a limit is within it. */
export function judge(value: number, limits: Limits, side: 'outside' | 'inside'): Verdict {
  if (value > limits.upper + resolution) return side === 'outside' ? 'rework' : 'lost';
  if (value < limits.lower - resolution) return side === 'outside' ? 'lost' : 'rework';
  return 'within';
}
