/** The few words on a drawing, and its decimal sign, in a language. */

import { drawingTexts, englishLanguage, type Language, tableIn } from '../../texts/index.ts';

export type DrawingWords = Readonly<
  Record<keyof typeof drawingTexts.texts, string> & { decimal: string }
>;

export function drawingWords(language: Language): DrawingWords {
  return { ...tableIn(language, drawingTexts), decimal: language.spoken?.decimalSign ?? '.' };
}

export const ENGLISH_DRAWING: DrawingWords = drawingWords(englishLanguage);
