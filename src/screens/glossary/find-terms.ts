/** Which trade words fit what is typed: those that begin with it first, then those that hold it. Pure. */

import type { Term } from '../../bench/index.ts';

/** All of them, by the alphabet of the language, while nothing is typed. */
export function findTerms(terms: readonly Term[], typed: string, locale: string): readonly Term[] {
  const wanted = plain(typed);
  return terms
    .map((term) => ({ term, rank: rankOf(term, wanted) }))
    .filter(({ rank }) => rank > 0)
    .sort((a, b) => b.rank - a.rank || a.term.term.localeCompare(b.term.term, locale))
    .map(({ term }) => term);
}

function rankOf({ term, also, about }: Term, wanted: string): number {
  if (wanted === '') return 1;
  const names = [term, ...also].map(plain);
  if (names.includes(wanted)) return 4;
  if (names.some((name) => name.startsWith(wanted))) return 3;
  if (names.some((name) => name.includes(wanted))) return 2;
  return plain(about).includes(wanted) ? 1 : 0;
}

function plain(text: string): string {
  return text.toLowerCase().replaceAll('-', ' ').trim();
}
