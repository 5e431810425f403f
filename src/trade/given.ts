/** Reads the values a rule was given. They are already checked; a miss here is our own mistake, so it throws. */

import type { RuleAnswer, RuleValues } from './rule.ts';

/** A number that must be there (given or by default). */
export function numberOf(values: RuleValues, name: string): number {
  const value = values[name];
  if (typeof value === 'number') return value;
  throw new TypeError(`The input "${name}" should be a number and is ${typeof value}.`);
}

/** A number that may be left out. */
export function numberIfAny(values: RuleValues, name: string): number | undefined {
  return values[name] === undefined ? undefined : numberOf(values, name);
}

/** A word out of a list, or a free text, that must be there. */
export function wordOf(values: RuleValues, name: string): string {
  const value = values[name];
  if (typeof value === 'string') return value;
  throw new TypeError(`The input "${name}" should be a word and is ${typeof value}.`);
}

/** A word that may be left out. */
export function wordIfAny(values: RuleValues, name: string): string | undefined {
  return values[name] === undefined ? undefined : wordOf(values, name);
}

/** A list of numbers; empty when it was left out. */
export function listOf(values: RuleValues, name: string): readonly number[] {
  const value = values[name];
  if (value === undefined) return [];
  if (typeof value !== 'number' && typeof value !== 'string') return value;
  throw new TypeError(`The input "${name}" should be a list and is ${typeof value}.`);
}

/** A number as a working line shows it: at most so many decimals, no trailing noughts. */
export function shown(value: number, decimals = 3): string {
  const text = String(Number(value.toFixed(decimals)));
  return text === '-0' ? '0' : text;
}

/** The answer when a thing cannot be: what, why, and what to change. */
export function impossible(fault: string): RuleAnswer {
  return { ok: false, fault };
}
