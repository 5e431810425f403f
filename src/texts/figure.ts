/** Figures that a screen sets by itself, by the signs of a language. */

import type { Language } from './language.ts';

/** "24,95" where the language has a comma. */
export function decimalIn(language: Language, value: number, decimals: number): string {
  return figureIn(language, value.toFixed(decimals));
}

/** A figure that is written already, with the decimal sign of the language. */
export function figureIn({ spoken }: Language, figure: string): string {
  return figure.replace('.', spoken?.decimalSign ?? '.');
}

/** A typed figure with a decimal point: "24,95" and "24.95" are the same where the language has a comma. */
export function typedIn({ spoken }: Language, text: string): string {
  return spoken?.decimalSign === ',' ? text.replace(/(?<=\d),(?=\d)/g, '.') : text;
}

/** The sign of a unit; as it is where the language has none of its own. */
export function unitIn({ spoken }: Language, unit: string): string {
  return spoken?.unitsShown[unit] ?? unit;
}

/** A written text with its figures: "0.25" is "0,25", and a list of such figures is parted by ";". */
export function figuresIn({ spoken }: Language, text: string): string {
  const sign = spoken?.decimalSign ?? '.';
  if (sign === '.') return text;
  return text.replace(/(?<=\d), (?=[-−]?\d)/g, '; ').replace(/(?<=\d)\.(?=\d)/g, sign);
}
