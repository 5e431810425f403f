/** One language: its codes, its translated tables, its spoken numbers. All data, so that a run can carry it. */

import type { Translated } from './area.ts';
import type * as english from './en/index.ts';
import type { Spoken } from './spoken.ts';

type AnyArea = (typeof english)[keyof typeof english];

/** All tables of a translation, by the name of their area. */
export type Tables = { readonly [A in AnyArea as A['area']]: Translated<A> };

export interface Language {
  /** For the page: "en", "de". */
  readonly code: string;
  /** For speech and for number and plural forms: "en-GB", "de-DE". */
  readonly locale: string;
  /** By its own people. */
  readonly name: string;
  /** English has none: its tables are those of the areas themselves. */
  readonly tables: Readonly<Record<string, Readonly<Record<string, unknown>>>>;
  /** Sentences that stand where they are worked out, by their English. English needs none. */
  readonly sentences?: Readonly<Record<string, string>>;
  /** English has none: its numbers are the room words' own. */
  readonly spoken?: Spoken;
}

export const englishLanguage: Language = {
  code: 'en',
  locale: 'en-GB',
  name: 'English',
  tables: {},
};
