/** Reads checked values inside a rule's work. A miss is our own mistake, so it throws. */

import type { Worded } from '../texts/index.ts';
import type { RuleValues, Worked } from './rule.ts';

/** The number of an input that is always there. */
export function numberOf(values: RuleValues, name: string): number {
  const value = values[name];
  if (typeof value !== 'number') throw new TypeError(`the rule reads "${name}" as a number`);
  return value;
}

/** The number of an optional input. */
export function numberIf(values: RuleValues, name: string): number | undefined {
  const value = values[name];
  return value === undefined ? undefined : numberOf(values, name);
}

/** The word of a choice or text input that is always there. */
export function wordOf(values: RuleValues, name: string): string {
  const value = values[name];
  if (typeof value !== 'string') throw new TypeError(`the rule reads "${name}" as a word`);
  return value;
}

/** The word of an optional choice or text input. */
export function wordIf(values: RuleValues, name: string): string | undefined {
  return values[name] === undefined ? undefined : wordOf(values, name);
}

/** The list of an input; empty when it was not given. */
export function listOf(values: RuleValues, name: string): readonly number[] {
  const value = values[name];
  if (value === undefined) return [];
  if (typeof value !== 'object') throw new TypeError(`the rule reads "${name}" as a list`);
  return value;
}

/** A refusal: what is impossible, why, and what to change. */
export function fault(sentence: Worded): Worked {
  return { ok: false, fault: sentence };
}
