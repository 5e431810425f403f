/** What was heard, held against what may be said now. */
import type { Language } from '../texts/index.ts';
import { wordsOfInteger } from './integer-words.ts';
import { denials, groupsOfWords, nearness, type PlainPhrase } from './near-phrase.ts';
import { normalise, withAndWithoutEdges } from './plain-text.ts';
import { integerIn } from './spoken-integers.ts';
import { denialsIn, formsIn } from './spoken-plain.ts';

export interface Sayable {
  readonly id: string;
  readonly phrases: readonly string[];
  /** Words with one kind of consequence. A word is never taken for one of another group. */
  readonly group: string;
  /** A hazard gate: only one of its phrases, word for word, counts. */
  readonly strict?: boolean;
}

export type Match =
  | {
      readonly kind: 'one';
      readonly id: string;
      /** As the sayable writes it. */
      readonly phrase: string;
      /** 1 for word for word in the likeliest text; lower for other texts and for near sounds. */
      readonly sure: number;
    }
  | { readonly kind: 'several'; readonly ids: readonly string[] }
  | { readonly kind: 'none' };

interface Phrase extends PlainPhrase {
  readonly plain: string;
  readonly denials: string;
  readonly sayable: Sayable;
  readonly phrase: string;
}

interface Candidate {
  readonly sayable: Sayable;
  readonly phrase: string;
  readonly sure: number;
}

/** One text of the ear: its words, as they are and without fillers at the ends. */
interface Text {
  readonly words: readonly string[];
  readonly forms: readonly (readonly string[])[];
  readonly plain: ReadonlySet<string>;
  readonly denials: string;
}

const NONE: Match = { kind: 'none' };
/** Each text further down the ear's list is this much less sure. */
const STEP_DOWN = 0.1;
/** Two candidates nearer than this are a tie, and the person is asked. */
const TIE = 0.12;
const LEAST_SURE = 0.72;
/** Sounds alike is never quite word for word. */
const NEVER_QUITE = 0.02;

const known = new Map<string, Text>();
const MOST_KNOWN = 2000;

/** Plain words with numerals written out. Kept, since phrases come again and again. */
function textOf(text: string, language: Language | undefined): Text {
  const key = `${language?.code ?? ''} ${text}`;
  const spoken = language?.spoken;
  const before = known.get(key);
  if (before !== undefined) return before;
  const inWords = (n: number) => (spoken ? integerIn(spoken, n) : wordsOfInteger(n));
  const words = normalise(text, language)
    .split(' ')
    .flatMap((word) => (/^\d{1,4}$/.test(word) ? inWords(Number(word)).split(/[ -]/) : [word]))
    .filter((word) => word !== '');
  const all = spoken ? formsIn(spoken, words) : withAndWithoutEdges(words);
  const forms = words.length === 0 ? [] : all;
  const plain = new Set(forms.map((form) => form.join(' ')));
  const made = { words, forms, plain, denials: spoken ? denialsIn(spoken, words) : denials(words) };
  if (known.size >= MOST_KNOWN) known.clear();
  known.set(key, made);
  return made;
}

function phrasesOf(sayables: readonly Sayable[], language: Language | undefined): Phrase[] {
  return sayables.flatMap((sayable) =>
    sayable.phrases.map((phrase) => {
      const { words, denials } = textOf(phrase, language);
      return { sayable, phrase, words, denials, plain: words.join(' '), group: sayable.group };
    }),
  );
}

/** A strict phrase counts only in the likeliest text, and only if every text denies as much as the phrase does. */
function counts({ sayable, denials }: Phrase, at: number, heard: readonly Text[]): boolean {
  if (sayable.strict !== true) return true;
  return at === 0 && heard.every((text) => text.denials === denials);
}

function exactly(at: number, phrases: readonly Phrase[], heard: readonly Text[]): Candidate[] {
  return phrases
    .filter((phrase) => heard[at]?.plain.has(phrase.plain) && counts(phrase, at, heard))
    .map(({ sayable, phrase }) => ({ sayable, phrase, sure: 1 - at * STEP_DOWN }));
}

function nearly(heard: readonly Text[], phrases: readonly Phrase[]): Candidate[] {
  const groups = groupsOfWords(phrases);
  const sureOf = (text: Text, at: number, phrase: Phrase): number =>
    Math.max(0, ...text.forms.map((form) => nearness(form, phrase, groups))) -
    at * STEP_DOWN -
    NEVER_QUITE;
  return heard
    .flatMap((text, at) =>
      phrases.map((phrase) => ({
        sayable: phrase.sayable,
        phrase: phrase.phrase,
        sure: sureOf(text, at, phrase),
      })),
    )
    .filter((candidate) => candidate.sure >= LEAST_SURE);
}

/** The surest candidate of each sayable, surest first. */
function surest(candidates: readonly Candidate[]): Candidate[] {
  const best = new Map<string, Candidate>();
  for (const candidate of [...candidates].sort((a, b) => b.sure - a.sure)) {
    if (!best.has(candidate.sayable.id)) best.set(candidate.sayable.id, candidate);
  }
  return [...best.values()];
}

function decided(candidates: readonly Candidate[]): readonly Candidate[] {
  const ranked = surest(candidates);
  return ranked.filter((candidate) => (ranked[0]?.sure ?? 0) - candidate.sure < TIE);
}

function matchOf(leaders: readonly Candidate[]): Match {
  const [first, ...tied] = leaders;
  if (first === undefined) return NONE;
  if (tied.length > 0) return { kind: 'several', ids: leaders.map(({ sayable }) => sayable.id) };
  return { kind: 'one', id: first.sayable.id, phrase: first.phrase, sure: first.sure };
}

/**
 * Which of the sayables was said, if any. `texts` are the ear's readings of one sound, likeliest first.
 * Word for word in the likeliest text settles it. Otherwise other texts and near sounds count, but never for a
 * strict sayable: near a gate's word is not the gate's word, and what is nearest to one is nothing. A near tie is
 * `several`. Near sounds are known for English alone; in another language only whole words count. A phrase inside a longer sentence, or one that is denied, is never taken.
 */
export function matchHeard(
  texts: readonly string[],
  sayables: readonly Sayable[],
  language?: Language,
): Match {
  const heard = texts.map((text) => textOf(text, language));
  const phrases = phrasesOf(sayables, language).filter((phrase) => phrase.plain !== '');
  const settled = phrases.some((phrase) => heard[0]?.plain.has(phrase.plain));
  if (settled) return matchOf(decided(exactly(0, phrases, heard)));
  const whole = heard.flatMap((_, at) => exactly(at, phrases, heard));
  const leaders = decided([...whole, ...(language?.spoken ? [] : nearly(heard, phrases))]);
  return leaders.some(({ sayable }) => sayable.strict === true) ? NONE : matchOf(leaders);
}
