/** The languages there are, and the one in use: fetched once, when it is chosen. */

import { englishLanguage, type Language } from '../texts/index.ts';

/** By code: the name by its own people, and where its tables come from. A new one is one row here. */
const languages: Readonly<Record<string, { name: string; load: () => Promise<Language> }>> = {
  en: { name: englishLanguage.name, load: async () => englishLanguage },
  de: { name: 'Deutsch', load: async () => (await import('../texts/de/index.ts')).german },
};

export const languageChoices: readonly (readonly [code: string, name: string])[] = Object.entries(
  languages,
).map(([code, { name }]) => [code, name]);

/** English for a code that nobody knows. */
export async function loadLanguage(code: string | undefined): Promise<Language> {
  return (await languages[code ?? '']?.load()) ?? englishLanguage;
}
