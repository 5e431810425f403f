/** A further number of a working, in the base unit of its quantity. */

import type { Worded } from '../texts/index.ts';
import type { Quantity, WorkedPart } from './rule.ts';

export function part(
  value: number | readonly number[],
  quantity: Quantity,
  meaning: Worded,
): WorkedPart {
  return { value, quantity, meaning };
}

/** A length in mm. */
export function lengthPart(value: number | readonly number[], meaning: Worded): WorkedPart {
  return part(value, 'length', meaning);
}
