/**
 * A sentence that stands where it is worked out, its values kept apart until it is known who reads it. The English
 * template is its key in the table `sentences` of another language.
 */

import { figuresIn } from './figure.ts';
import type { Language } from './language.ts';
import { optionShown } from './option.ts';
import { filled } from './say.ts';

export interface Sentence {
  /** The text between the values: one more than there are values. */
  readonly text: readonly string[];
  readonly values: readonly Piece[];
}

/** A whole text, or one with values. */
export type Worded = string | Sentence;

/** A number, a word or a figure as text, or a sentence of its own. */
export type Piece = number | Worded;

/** Tag of a sentence with values: worded`${n} passes of ${depth} mm`. */
export function worded(text: readonly string[], ...values: readonly Piece[]): Sentence {
  return { text, values };
}

/** Pieces one after the other. A piece may be empty. */
export function sequence(pieces: readonly Piece[], between = ''): Sentence {
  const gaps = pieces.slice(1).map(() => between);
  return { text: pieces.length === 0 ? [''] : ['', ...gaps, ''], values: pieces };
}

/** "{0} passes of {1} mm". */
export function templateOf({ text }: Sentence): string {
  return text.reduce((before, after, index) => `${before}{${index - 1}}${after}`);
}

/** The sentence as a language says it; in English where the language has no words for it. */
export function wordedIn(language: Language, said: Piece): string {
  const { sentences } = language;
  if (sentences === undefined) return inEnglish(said);
  if (typeof said !== 'object') return ofWhole(language, sentences, String(said));
  const values = said.values.map((one) => wordedIn(language, one));
  const template = templateOf(said);
  return filled(
    found(sentences, template) ?? template,
    language,
    Object.fromEntries(values.entries()),
  );
}

/** A text without values may be a whole sentence, a choice by its id, or a figure. */
function ofWhole(
  language: Language,
  sentences: Readonly<Record<string, string>>,
  text: string,
): string {
  return found(sentences, text) ?? optionShown(language, text) ?? figuresIn(language, text);
}

function found(sentences: Readonly<Record<string, string>>, key: string): string | undefined {
  return Object.hasOwn(sentences, key) ? sentences[key] : undefined;
}

function inEnglish(said: Piece): string {
  if (typeof said !== 'object') return String(said);
  let told = said.text[0] ?? '';
  said.values.forEach((value, index) => {
    told += inEnglish(value) + (said.text[index + 1] ?? '');
  });
  return told;
}
