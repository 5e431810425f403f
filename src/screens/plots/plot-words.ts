/** The words on plots, and their decimal sign, in a language. */

import { englishLanguage, type Language, plotTexts, tableIn } from '../../texts/index.ts';

export type PlotWords = Readonly<
  Record<keyof typeof plotTexts.texts, string> & { decimal: string }
>;

export function plotWords(language: Language): PlotWords {
  return { ...tableIn(language, plotTexts), decimal: language.spoken?.decimalSign ?? '.' };
}

export const ENGLISH_PLOTS: PlotWords = plotWords(englishLanguage);

/** A figure with at most `decimals` decimals, none that say nothing. */
export function figure(value: number, decimals: number, words: PlotWords): string {
  return String(Number(value.toFixed(decimals))).replace('.', words.decimal);
}

/** A figure with exactly `decimals` decimals, as sizes are written. */
export function sizeFigure(value: number, decimals: number, words: PlotWords): string {
  return value.toFixed(decimals).replace('.', words.decimal);
}
