/** The phrases of a language as patterns: where a question begins, and what stands between its numbers. Pure. */

import { asksTexts, type Language, tableIn } from '../texts/index.ts';

type Texts = (typeof asksTexts)['texts'];
/** Phrases that belong together, by their key. */
export type PhrasesOf = {
  readonly [K in keyof Texts]: Texts[K] extends string ? never : K;
}[keyof Texts];

const wordEnd = '(?![\\p{L}\\p{N}])';
const wordStart = '(?<![\\p{L}\\p{N}])';

export class Phrasing {
  constructor(readonly language: Language) {}

  all(key: PhrasesOf): readonly string[] {
    return tableIn(this.language, asksTexts)[key];
  }

  /** One of the phrases as a pattern, the longest first. */
  private any(key: PhrasesOf): string {
    const longest = [...this.all(key)].sort((a, b) => b.length - a.length);
    return `(?:${longest.map(escaped).join('|')})`;
  }

  begins(key: PhrasesOf, words: string): boolean {
    return new RegExp(`^${this.any(key)}${wordEnd}`, 'u').test(words);
  }

  has(key: PhrasesOf, words: string): boolean {
    return this.within(key).test(words);
  }

  /** Without a phrase at the beginning; where it is not there the words as they are. */
  after(key: PhrasesOf, words: string): string {
    return words.replace(new RegExp(`^${this.any(key)}${wordEnd}`, 'u'), '').trim();
  }

  /** Without a phrase at the end. */
  before(key: PhrasesOf, words: string): string {
    return words.replace(new RegExp(`${wordStart}${this.any(key)}$`, 'u'), '').trim();
  }

  /** Without the phrases wherever they stand. */
  without(keys: readonly PhrasesOf[], words: string): string {
    return keys
      .reduce((left, key) => left.replaceAll(this.within(key), ' '), words)
      .replace(/ +/g, ' ')
      .trim();
  }

  /** The words on the two sides of the first such phrase. */
  split(key: PhrasesOf, words: string): readonly [string, string] | undefined {
    const [, left, right] = new RegExp(`^(.+?) ${this.any(key)} (.+)$`, 'u').exec(words) ?? [];
    return left === undefined || right === undefined ? undefined : [left, right];
  }

  /** Without the word for a speed, but where another word makes something else of it. */
  withoutSpeed(words: string): string {
    const other = `(?! ${this.any('notSpeed')}${wordEnd})`;
    const speed = new RegExp(`${wordStart}${this.any('speed')}${wordEnd}${other}`, 'u');
    return words.replace(speed, '').trim();
  }

  /** Letters that were heard by their names, as they are written. */
  spelt(words: string): string {
    return this.all('letters').reduce((left, pair) => {
      const [name = '', letter = ''] = pair.split(' ');
      return left.replaceAll(new RegExp(`${wordStart}${name}${wordEnd}`, 'gu'), letter);
    }, words);
  }

  private within(key: PhrasesOf): RegExp {
    return new RegExp(`${wordStart}${this.any(key)}${wordEnd}`, 'gu');
  }
}

function escaped(phrase: string): string {
  return phrase.replace(/[.*+?^${}()|[\]\\]/g, '\\$&');
}

const made = new Map<string, Phrasing>();

/** Made once for each language. */
export function phrasingIn(language: Language): Phrasing {
  const known = made.get(language.code) ?? new Phrasing(language);
  made.set(language.code, known);
  return known;
}
