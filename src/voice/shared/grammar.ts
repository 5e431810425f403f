/** The grammar for one state: the said list and nothing else. Pure. */
import type { ListenFor } from '../../bench/ports.ts';
import { apartOnly } from './confusable.ts';
import {
  type NumberArc,
  type NumberPaths,
  numberPaths,
  numberPathsInside,
} from './number-grammar.ts';
import {
  type ExtraPronunciations,
  PHONES,
  type Pronunciations,
  phraseWords,
  pronunciationsOf,
} from './pronunciation.ts';
import { withoutPasses } from './without-passes.ts';

export interface Arc {
  readonly from: number;
  readonly to: number;
  /** Empty: passes without a sound. */
  readonly word: string;
  /** Probability, above 0 and at most 1. */
  readonly weight: number;
}

/** A finite-state grammar with the pronunciations of exactly its words. */
export interface Grammar {
  readonly states: number;
  readonly start: number;
  readonly end: number;
  readonly arcs: readonly Arc[];
  /** Word as written in arcs (a second way is `word(2)`) and its phones. */
  readonly lexicon: readonly (readonly [word: string, phones: string])[];
}

/** What to listen with, and the words left out for want of a pronunciation. */
export interface BuiltGrammar {
  /** Phrases, and numbers that may lie outside the range. A phrase with an unknown word is left out whole. */
  readonly grammar: Grammar;
  /** The same with only numbers inside the range, where they can be listed. */
  readonly inside?: Grammar;
  /** The phrases in it, as they are spoken, and every way to say a word. */
  readonly spoken: readonly string[];
  readonly waysOf: (word: string) => readonly string[];
  readonly missing: readonly string[];
}

/** The phrase with the word that must be said before it, where there is one. */
export function spokenAs(phrase: string, { led }: ListenFor): string {
  const lead = led && Object.hasOwn(led, phrase) ? led[phrase] : undefined;
  return !lead || phrase.startsWith(`${lead} `) ? phrase : `${lead} ${phrase}`;
}

/** Nearer than this, one override is taken for another: neither is heard, and the other names stay. */
const ALIKE = 0.14;

function withoutAlike(listenFor: ListenFor, dictionary: Pronunciations): readonly string[] {
  const { phrases, led = {}, pronunciations = {} } = listenFor;
  const rare = phrases.filter((phrase) => Object.hasOwn(led, phrase));
  const apart = new Set(apartOnly(rare, dictionary, pronunciations, ALIKE));
  return phrases.filter((phrase) => !Object.hasOwn(led, phrase) || apart.has(phrase));
}

/** Builds the grammar of what counts now. */
export function buildGrammar(listenFor: ListenFor, dictionary: Pronunciations): BuiltGrammar {
  const lexicon = new Lexicon(dictionary, listenFor.pronunciations ?? {});
  const { number } = listenFor;
  const phrases = withoutAlike(listenFor, dictionary).map((phrase) => spokenAs(phrase, listenFor));
  const all = number && numberPaths(number);
  const inside = number && numberPathsInside(number);
  const grammar = grammarOf(phrases, all, lexicon);
  return {
    grammar,
    ...(inside ? { inside: grammarOf(phrases, inside, lexicon) } : {}),
    missing: [...lexicon.missing],
    spoken: phrases
      .map(phraseWords)
      .filter((words) => words.length > 0 && lexicon.knows(words))
      .map((words) => words.join(' ')),
    waysOf: (word) => lexicon.waysOf(word),
  };
}

function grammarOf(
  phrases: readonly string[],
  number: NumberPaths | undefined,
  lexicon: Lexicon,
): Grammar {
  const builder = new GrammarBuilder();
  for (const phrase of phrases) {
    const words = phraseWords(phrase);
    if (words.length > 0 && lexicon.knows(words)) builder.addPath(words);
  }
  if (number && lexicon.knows(number.words)) {
    builder.addNumber(
      number.arcs,
      number.ends,
      CORRECTIONS.filter((word) => phrases.includes(word)),
    );
  }
  return builder.finish(lexicon);
}

/** The pronunciations of the words in use. */
class Lexicon {
  readonly missing = new Set<string>();

  constructor(
    private readonly dictionary: Pronunciations,
    private readonly extra: ExtraPronunciations,
  ) {}

  knows(words: readonly string[]): boolean {
    const unknown = words.filter((word) => this.waysOf(word).length === 0);
    for (const word of unknown) this.missing.add(word);
    return unknown.length === 0;
  }

  /** A word's further ways are written `word(2)`, as the engine wants them. */
  entries(words: readonly string[]): Grammar['lexicon'] {
    return words.flatMap((word) =>
      this.waysOf(word).map((phones, i) => [i === 0 ? word : `${word}(${i + 1})`, phones] as const),
    );
  }

  waysOf(word: string): readonly string[] {
    return pronunciationsOf(word, this.dictionary, this.extra);
  }
}

/** Words that may stand before a number to put a wrong one right in one breath. */
const CORRECTIONS: readonly string[] = ['no', 'wrong'];

class GrammarBuilder {
  private states = 2;
  private readonly arcs: Arc[] = [];
  private readonly drawn = new Set<string>();
  private readonly next = new Map<string, number>();

  addPath(words: readonly string[]): void {
    const last = words.length - 1;
    let at = START;
    words.forEach((word, i) => {
      at = i === last ? this.arc(at, END, word) : this.step(at, word);
    });
  }

  /** Lays the number's own states behind ours; state 0 of the number is our start. */
  addNumber(
    arcs: readonly NumberArc[],
    ends: readonly number[],
    corrections: readonly string[],
  ): void {
    const base = this.states;
    const largest = Math.max(...arcs.map((arc) => Math.max(arc.from, arc.to)));
    this.states += largest + 1;
    this.arc(START, base, '');
    for (const { from, to, word, weight } of arcs) this.arc(base + from, base + to, word, weight);
    for (const end of ends) this.arc(base + end, END, '');
    for (const word of corrections) this.arc(this.step(START, word), base, '');
  }

  finish(lexicon: Lexicon): Grammar {
    const words = [...new Set(this.arcs.map((arc) => arc.word).filter((word) => word !== ''))];
    const { states } = this;
    const arcs = withoutPasses(this.arcs, END);
    return { states, start: START, end: END, arcs, lexicon: lexicon.entries(words) };
  }

  private step(from: number, word: string): number {
    const key = `${from} ${word}`;
    const known = this.next.get(key);
    if (known !== undefined) return known;
    const to = this.states++;
    this.next.set(key, to);
    return this.arc(from, to, word);
  }

  private arc(from: number, to: number, word: string, weight = 1): number {
    const key = `${from} ${to} ${word}`;
    if (!this.drawn.has(key)) this.arcs.push({ from, to, word, weight });
    this.drawn.add(key);
    return to;
  }
}

const START = 0;
const END = 1;

/** Any phones in any order: what the sound looks like when it is none of our words. */
export function phoneLoop(weight: number): Grammar {
  const words = PHONES.map((phone) => [`+${phone}+`, phone] as const);
  return {
    states: 1,
    start: 0,
    end: 0,
    arcs: words.map(([word]) => ({ from: 0, to: 0, word, weight })),
    lexicon: words,
  };
}
