/** The language of what is seen: the page's, or that of the run on the Bench. */

import { createContext } from 'preact';
import { useContext, useMemo } from 'preact/hooks';
import { type Area, englishLanguage, type Language, type Say, sayIn } from '../texts/index.ts';

export const LanguageOfPage = createContext<Language>(englishLanguage);

export function useLanguage(): Language {
  return useContext(LanguageOfPage);
}

/** The texts of an area: `const say = useSay(shelfTexts); say('title')`. */
export function useSay<A extends Area>(area: A): Say<A> {
  const language = useLanguage();
  return useMemo(() => sayIn(language, area), [language, area]);
}
