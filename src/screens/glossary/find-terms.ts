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

/** Its own name counts before other names, and any name before what is written of it. */
function rankOf({ term, also, about }: Term, wanted: string): number {
  if (wanted === '') return 1;
  const own = fitOf(plain(term), wanted);
  const other = Math.max(0, ...also.map((name) => fitOf(plain(name), wanted)));
  if (own + other > 0) return 1 + Math.max(2 * own, 2 * other - 1);
  return plain(about).includes(wanted) ? 1 : 0;
}

function fitOf(name: string, wanted: string): number {
  if (name === wanted) return 3;
  if (name.startsWith(wanted)) return 2;
  return name.includes(wanted) ? 1 : 0;
}

function plain(text: string): string {
  return text.toLowerCase().replaceAll('-', ' ').trim();
}
