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

/** Figures alone or in a list, with or without a unit, and a metric thread. */
const figures =
  /^[+\-−]?\d[\d.]*(?:e[+-]?\d+)?(?:, [-−]?\d[\d.]*)*(?: \D*)?$|^M\d[\d.]*(?:x[\d.]+)?$/;

/** Written figures: "0.25 mm" is "0,25 mm", and a list of such figures is parted by ";". Other texts stay. */
export function figuresIn({ spoken }: Language, text: string): string {
  const sign = spoken?.decimalSign ?? '.';
  if (sign === '.' || !figures.test(text)) return text;
  return text.replaceAll(', ', '; ').replaceAll('.', sign);
}
