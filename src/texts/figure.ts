/** Figures that a screen sets by itself, by the signs of a language. */

import type { Language } from './language.ts';

/** "24,95" where the language has a comma. */
export function decimalIn({ spoken }: Language, value: number, decimals: number): string {
  return value.toFixed(decimals).replace('.', spoken?.decimalSign ?? '.');
}

/** The sign of a unit; as it is where the language has none of its own. */
export function unitIn({ spoken }: Language, unit: string): string {
  return spoken?.unitsShown[unit] ?? unit;
}
