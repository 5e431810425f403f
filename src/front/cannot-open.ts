/** What is shown where nothing else can be: the settings are not known then, so the language is that of the browser. */

import { englishLanguage, frontTexts, sayIn, sentenceOf } from '../texts/index.ts';
import { loadLanguage } from './language.ts';

export async function cannotOpen(error: unknown): Promise<string> {
  const [code] = navigator.language.split('-');
  const language = await loadLanguage(code).catch(() => englishLanguage);
  document.documentElement.lang = language.code;
  return sayIn(language, frontTexts)('cannotOpen', { why: sentenceOf(error, language) });
}
