/** A table of texts, and the shape its translation must have. */

/** A template in ICU MessageFormat, or the phrases that may be said for one thing. */
export type Entry = string | readonly string[];

/** The texts of one part of the tool, in English. The name finds the same part in another language. */
export interface Area {
  readonly area: string;
  readonly texts: Readonly<Record<string, Entry>>;
}

/** The same keys in another language: a missing one does not compile. */
export type Translated<A extends Area> = {
  readonly [K in keyof A['texts']]: A['texts'][K] extends string ? string : readonly string[];
};
