/** Finds the row of a material: in the table, or among a shop's own while its rules work. */

import type { Material } from './material.ts';
import { findMaterial } from './table.ts';

/**
 * The shop's rows, set only for the length of one synchronous call. Handing them through every rule
 * was turned down: thirty signatures for something most questions never use.
 */
let shopRows: readonly Material[] = [];

/** Runs `act` with these rows known beside the table, and forgets them again. */
export function knowing<T>(rows: readonly Material[], act: () => T): T {
  const before = shopRows;
  shopRows = rows;
  try {
    return act();
  } finally {
    shopRows = before;
  }
}

/** The row of a name that an input has already checked. A miss is our own mistake. */
export function materialNamed(name: string): Material {
  const found = shopRows.find((row) => row.name === name) ?? findMaterial(name);
  if (found === undefined) throw new RangeError(`no material "${name}" in the table`);
  return found;
}
