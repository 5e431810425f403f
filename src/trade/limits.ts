/** What says "not faster than this": chuck, card, work, and the lowest of them. Pure. */

import { aNumber } from './inputs.ts';
import type { RuleValues } from './rule.ts';
import { numberIf } from './values.ts';

export interface Limit {
  readonly name: string;
  readonly speed: number;
}

/** Speeds this near count as equal, so that a limit of exactly a card speed allows it. */
export const NEAR = 1 + 1e-9;

/** An input that limits the speed, in the base unit of the quantity; it may be left out. */
export function aLimit(
  name: string,
  quantity: 'spindleSpeed' | 'surfaceSpeed',
  most: number,
  meaning: string,
) {
  return aNumber(name, quantity, [0, most], meaning, { aboveMin: true, optional: true });
}

/** What the machine's card allows for a kind of work. */
export function cardLimit(quantity: 'spindleSpeed' | 'surfaceSpeed', most: number) {
  return aLimit(
    'cardLimit',
    quantity,
    most,
    "highest speed the machine's card allows for this work",
  );
}

/** Those of the limits that were given. `names` holds each input with what it is called. */
export function limitsGiven(
  values: RuleValues,
  names: readonly (readonly [input: string, name: string])[],
): readonly Limit[] {
  return names.flatMap(([input, name]) => {
    const speed = numberIf(values, input);
    return speed === undefined ? [] : [{ name, speed }];
  });
}

/** The first, or the lowest of those below it. */
export function lowestOf(first: Limit, others: readonly Limit[]): Limit {
  return others.reduce((low, one) => (one.speed < low.speed ? one : low), first);
}
