/** Choices of a flow or a rule, as they are shown and said: "mild-steel" is "mild steel". */

import { optionTexts } from './en/options.ts';
import type { Language } from './language.ts';
import { tableIn } from './say.ts';

/** As shown; an id that no table knows is shown as it is written, without its hyphens. */
export function optionText(language: Language, id: string): string {
  return optionShown(language, id) ?? id.replaceAll('-', ' ');
}

/** As shown; nothing for what no table knows as a choice. */
export function optionShown(language: Language, id: string): string | undefined {
  return namesOf(language, id)[0];
}

/** What people say for it; empty where the trade's own table has the names. */
export function optionPhrases(language: Language, id: string): readonly string[] {
  return namesOf(language, id)
    .slice(1)
    .map((name) => name.toLowerCase());
}

function namesOf(language: Language, id: string): readonly string[] {
  const table: Readonly<Record<string, readonly string[]>> = tableIn(language, optionTexts);
  return Object.hasOwn(table, id) ? (table[id] ?? []) : [];
}

/** A label inside a sentence: English makes it small, a language of capital nouns does not. */
export function midSentence({ spoken }: Language, label: string): string {
  return spoken?.keepsCapitals ? label : label.toLowerCase();
}
