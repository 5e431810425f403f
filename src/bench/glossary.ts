/** Trade terms in our own words, and the parts of this machine: "what is a chuck?", "where is the tailstock?". Pure. */

import type { MachineKind, Step } from '../flow/index.ts';
import { apprenticeTexts, glossaryTexts, type Language, tableIn } from '../texts/index.ts';
import { normalise } from '../words/index.ts';

export interface Term {
  readonly id: string;
  readonly term: string;
  readonly about: string;
  /** Other names for the same. */
  readonly also: readonly string[];
}

/** An ear with a list of words hears only the terms of its step: more of them are mistaken for each other. */
const mostTerms = 6;
const mostParts = 3;

const read = new WeakMap<object, readonly Term[]>();

/** All terms, in the order of the file: each entry is the term, what it is, then its other names. */
export function glossaryIn(language: Language): readonly Term[] {
  const table: Readonly<Record<string, readonly string[]>> = tableIn(language, glossaryTexts);
  const known = read.get(table);
  if (known) return known;
  const terms = Object.entries(table).map(([id, [term = id, about = '', ...also]]) => {
    return { id, term, about, also };
  });
  read.set(table, terms);
  return terms;
}

/** The term somebody means by a name, if there is one. */
export function findTerm(name: string, language: Language): Term | undefined {
  const wanted = plain(name);
  if (wanted === '') return undefined;
  const is = (one: string) => plain(one) === wanted || `${plain(one)}s` === wanted;
  return glossaryIn(language).find(({ term, also }) => [term, ...also].some(is));
}

type Part = MachineKind['parts'][number];

/** The part of this machine that a name means: its own name, its id, or another name of the same term. */
export function findPartCalled(
  name: string,
  kind: MachineKind,
  language: Language,
): Part | undefined {
  const wanted = plain(name);
  const own = kind.parts.find((part) => plain(part.name) === wanted || plain(part.id) === wanted);
  if (own) return own;
  const term = findTerm(name, language);
  const names = term ? [term.term, ...term.also].map(plain) : [];
  return kind.parts.find((part) => names.includes(plain(part.name)));
}

/** What a question in free words asks about; nothing where it is no such question. */
export function askedAbout(
  text: string,
  language: Language,
): { readonly ask: 'what' | 'where'; readonly name: string } | undefined {
  const said = normalise(text, language);
  const { whatIs, whereIs } = tableIn(language, apprenticeTexts);
  const after = (heads: readonly string[]) =>
    heads.flatMap((head) => (said.startsWith(`${head} `) ? [said.slice(head.length + 1)] : []))[0];
  const part = after(whereIs);
  if (part !== undefined) return { ask: 'where', name: part };
  const term = after(whatIs);
  return term === undefined ? undefined : { ask: 'what', name: term };
}

/** A step is looked at with every word that is said in it. */
const found = new WeakMap<Step, { readonly language: Language; readonly terms: readonly Term[] }>();

/** Terms that the texts of a step use, in the order in which they come. */
export function termsOfStep(step: Step, language: Language): readonly Term[] {
  const known = found.get(step);
  if (known?.language === language) return known.terms;
  const terms = findTermsIn(step, language);
  found.set(step, { language, terms });
  return terms;
}

function findTermsIn(step: Step, language: Language): readonly Term[] {
  const { title, say, long = '', why = '' } = step;
  const text = ` ${plain([title, say, long, why].join(' '))} `;
  const place = ({ term, also }: Term) => {
    const places = [term, ...also]
      .map((name) => text.search(new RegExp(` ${plain(name)}s? `)))
      .filter((at) => at >= 0);
    return places.length === 0 ? -1 : Math.min(...places);
  };
  return glossaryIn(language)
    .map((term) => ({ term, at: place(term) }))
    .filter(({ at }) => at >= 0)
    .sort((a, b) => a.at - b.at)
    .slice(0, mostTerms)
    .map(({ term }) => term);
}

/** Parts of the machine that a step is about, its own first. */
export function partsNamed(
  ids: readonly (string | undefined)[],
  kind: MachineKind,
): readonly Part[] {
  const wanted = [...new Set(ids)].slice(0, mostParts);
  return wanted.flatMap((id) => kind.parts.find((part) => part.id === id) ?? []);
}

function plain(name: string): string {
  return name
    .toLowerCase()
    .replace(/[^\p{L}\p{N}]+/gu, ' ')
    .trim();
}
