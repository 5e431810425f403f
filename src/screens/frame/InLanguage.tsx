/** A part of the page in the language of a run, which may be another than the page's; readers are told by `lang`. */

import type { ComponentChildren } from 'preact';
import type { Language } from '../../texts/index.ts';
import { LanguageOfPage, useLanguage } from '../use-say.ts';

interface InLanguageProps {
  readonly language: Language;
  readonly children: ComponentChildren;
}

export function InLanguage({ language, children }: InLanguageProps) {
  const same = useLanguage().code === language.code;
  return (
    <LanguageOfPage.Provider value={language}>
      {same ? (
        children
      ) : (
        <div class="in-language" lang={language.code}>
          {children}
        </div>
      )}
    </LanguageOfPage.Provider>
  );
}
