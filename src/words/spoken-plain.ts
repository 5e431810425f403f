/** Text made plain by the table of a language: small letters, no punctuation, no hesitation. */

import type { Spoken } from '../texts/index.ts';

/** "Äh, die Haube ist zu!" → "haube ist zu". Figures and their signs stay. */
export function plainIn(spoken: Spoken, text: string): string {
  return text
    .normalize('NFC')
    .toLowerCase()
    .replace(/(\p{L})[-‐‑–—](?=\p{L})/gu, '$1 ')
    .replace(/[.,](?!\d)|[;!?…"“”„()[\]]|:(?!\d)/g, ' ')
    .replace(/(^|\s)[-–—](?=\s|$)/g, ' ')
    .split(/\s+/)
    .filter((word) => word !== '' && !spoken.hesitation.includes(word))
    .map((word) => spoken.spellings[word] ?? word)
    .join(' ');
}

/** The words as they are, and without politeness at the front, the end, and both. */
export function formsIn(spoken: Spoken, words: readonly string[]): readonly (readonly string[])[] {
  const front = words.slice(
    Math.max(
      0,
      words.findIndex((word) => !spoken.edges.includes(word)),
    ),
  );
  const back = (row: readonly string[]) =>
    row.slice(0, row.findLastIndex((word) => !spoken.edges.includes(word)) + 1);
  const forms = [words, front, back(words), back(front)].filter((row) => row.length > 0);
  return [...new Map(forms.map((form) => [form.join(' '), form])).values()];
}

/** Words that deny, in order. */
export function denialsIn(spoken: Spoken, words: readonly string[]): string {
  return words
    .filter((word) => spoken.negations.includes(word))
    .sort()
    .join(' ');
}
