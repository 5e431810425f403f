/** A said size in the base unit of its quantity. */

import type { SaidNumber } from '../flow/index.ts';
import { toBase } from '../trade/index.ts';

/** `value` is in the unit the number is read in on this machine. */
export function baseOf(value: number, number: SaidNumber): number {
  return toBase(value, number.unit, number.quantity);
}
