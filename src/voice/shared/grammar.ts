/** The grammar for one state: the said list and nothing else. Pure. */
import type { ListenFor } from '../../bench/ports.ts';
import { numberPaths } from './number-grammar.ts';
import { PHONES, type Pronunciations, phraseWords, pronunciationsOf } from './pronunciation.ts';

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

/** A grammar, and the words left out for want of a pronunciation; phrases with such a word are left out whole. */
export interface BuiltGrammar {
  readonly grammar: Grammar;
  readonly missing: readonly string[];
}

/** Builds the grammar of what counts now. */
export function buildGrammar(listenFor: ListenFor, dictionary: Pronunciations): BuiltGrammar {
  const builder = new GrammarBuilder();
  const extra = listenFor.pronunciations ?? {};
  const lexicon = new Map<string, string>();
  const missing = new Set<string>();
  const know = (words: readonly string[]): boolean => {
    const ways = words.map((word) => ({ word, ways: pronunciationsOf(word, dictionary, extra) }));
    const unknown = ways.filter((w) => w.ways.length === 0);
    for (const { word } of unknown) missing.add(word);
    if (unknown.length > 0) return false;
    for (const { word, ways: all } of ways) {
      for (const [i, phones] of all.entries()) {
        lexicon.set(i === 0 ? word : `${word}(${i + 1})`, phones);
      }
    }
    return true;
  };
  for (const phrase of listenFor.phrases) {
    const words = phraseWords(phrase);
    if (words.length > 0 && know(words)) builder.addPath(words);
  }
  if (listenFor.number) {
    const number = numberPaths(listenFor.number);
    if (know(number.words))
      builder.addNumber(number.arcs, number.ends, CORRECTIONS, listenFor.phrases);
  }
  return { grammar: builder.finish([...lexicon]), missing: [...missing] };
}

/** Words that may stand before a number to put a wrong one right in one breath. */
const CORRECTIONS: readonly string[] = ['no', 'wrong'];

class GrammarBuilder {
  private states = 2;
  private readonly arcs: Arc[] = [];
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
    arcs: readonly { readonly from: number; readonly to: number; readonly word: string }[],
    ends: readonly number[],
    corrections: readonly string[],
    phrases: readonly string[],
  ): void {
    const base = this.states;
    const largest = Math.max(...arcs.map((arc) => Math.max(arc.from, arc.to)));
    this.states += largest + 1;
    this.arc(START, base, '');
    for (const { from, to, word } of arcs) this.arc(base + from, base + to, word);
    for (const end of ends) this.arc(base + end, END, '');
    for (const word of corrections) {
      if (phrases.includes(word)) this.arc(this.step(START, word), base, '');
    }
  }

  finish(lexicon: Grammar['lexicon']): Grammar {
    return { states: this.states, start: START, end: END, arcs: this.arcs, lexicon };
  }

  private step(from: number, word: string): number {
    const key = `${from} ${word}`;
    const known = this.next.get(key);
    if (known !== undefined) return known;
    const to = this.states++;
    this.next.set(key, to);
    return this.arc(from, to, word);
  }

  private arc(from: number, to: number, word: string): number {
    const isThere = this.arcs.some((a) => a.from === from && a.to === to && a.word === word);
    if (!isThere) this.arcs.push({ from, to, word, weight: 1 });
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
