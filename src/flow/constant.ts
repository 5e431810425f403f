/** What a number written into a flow with its unit stands for. */

import { findUnit, type Quantity, quantityOfUnit, toBase } from '../trade/index.ts';

/** Where the place does not say it, the unit does: these come first, the rest in the trade's order. */
const likely: readonly Quantity[] = [
  'length',
  'angle',
  'spindleSpeed',
  'feedPerRev',
  'surfaceSpeed',
  'feedRate',
  'time',
];

/** The quantity of a constant: the one the place wants when it has the unit, else the likeliest. */
export function constantQuantity(unit: string, wanted?: Quantity): Quantity | undefined {
  if (wanted !== undefined && findUnit(unit, wanted)) return wanted;
  return likely.find((one) => findUnit(unit, one)) ?? quantityOfUnit(unit);
}

/** A constant in the base unit of its quantity; a unit nobody knows leaves it as it stands. */
export function constantInBase(value: number, unit: string, wanted?: Quantity): number {
  const quantity = constantQuantity(unit, wanted);
  return quantity === undefined ? value : toBase(value, unit, quantity);
}
