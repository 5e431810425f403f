/** A further number of a working, in the base unit of its quantity. */

import type { Quantity, WorkingPart } from './rule.ts';

export function part(
  value: number | readonly number[],
  quantity: Quantity,
  meaning: string,
): WorkingPart {
  return { value, quantity, meaning };
}

/** A length in mm. */
export function lengthPart(value: number | readonly number[], meaning: string): WorkingPart {
  return part(value, 'length', meaning);
}
