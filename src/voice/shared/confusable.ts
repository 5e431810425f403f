/** How alike phrases sound, by their phones. Pure. */
import {
  type ExtraPronunciations,
  type Pronunciations,
  phraseWords,
  pronunciationsOf,
} from './pronunciation.ts';

/** Place, manner and voice of consonants; height and place of vowels. After the IPA chart (2020). */
const CONSONANTS: Readonly<
  Record<string, readonly [place: number, manner: string, voiced: boolean]>
> = {
  P: [0, 'stop', false],
  B: [0, 'stop', true],
  M: [0, 'nose', true],
  W: [0, 'glide', true],
  F: [1, 'hiss', false],
  V: [1, 'hiss', true],
  TH: [2, 'hiss', false],
  DH: [2, 'hiss', true],
  T: [3, 'stop', false],
  D: [3, 'stop', true],
  N: [3, 'nose', true],
  S: [3, 'hiss', false],
  Z: [3, 'hiss', true],
  L: [3, 'glide', true],
  R: [4, 'glide', true],
  SH: [4, 'hiss', false],
  ZH: [4, 'hiss', true],
  CH: [4, 'burst', false],
  JH: [4, 'burst', true],
  Y: [5, 'glide', true],
  K: [6, 'stop', false],
  G: [6, 'stop', true],
  NG: [6, 'nose', true],
  HH: [7, 'hiss', false],
};

/** Height 0 (close) to 3 (open), place 0 (front) to 2 (back), and whether it moves. */
const VOWELS: Readonly<Record<string, readonly [height: number, place: number, moves: boolean]>> = {
  IY: [0, 0, false],
  IH: [0.5, 0.3, false],
  EH: [1.7, 0.2, false],
  AE: [2.5, 0.2, false],
  AA: [3, 1.7, false],
  AO: [2, 2, false],
  AH: [2, 1.2, false],
  UH: [0.5, 1.7, false],
  UW: [0, 2, false],
  ER: [1.5, 1, false],
  EY: [1, 0, true],
  AY: [2, 0.8, true],
  OY: [1.3, 1.2, true],
  AW: [2, 1.5, true],
  OW: [1, 2, true],
};

/** How unlike two phones are: 0 the same, 1 nothing in common. */
export function phoneDistance(a: string, b: string): number {
  if (a === b) return 0;
  const [consonantA, consonantB] = [CONSONANTS[a], CONSONANTS[b]];
  if (consonantA && consonantB) {
    const place = Math.min(1, Math.abs(consonantA[0] - consonantB[0]) / 4);
    const manner = consonantA[1] === consonantB[1] ? 0 : 1;
    const voice = consonantA[2] === consonantB[2] ? 0 : 1;
    return 0.15 + 0.35 * place + 0.35 * manner + 0.15 * voice;
  }
  const [vowelA, vowelB] = [VOWELS[a], VOWELS[b]];
  if (!vowelA || !vowelB) return 1;
  const moves = vowelA[2] === vowelB[2] ? 0 : 0.15;
  const apart = Math.abs(vowelA[0] - vowelB[0]) / 3 + Math.abs(vowelA[1] - vowelB[1]) / 2;
  return Math.min(0.9, 0.1 + moves + 0.4 * apart);
}

const GAP = 0.75;

/** Distance of two rows of phones, 0 the same to about 1 nothing in common, per phone of the longer. */
export function rowDistance(a: readonly string[], b: readonly string[]): number {
  let above = Array.from({ length: b.length + 1 }, (_, j) => j * GAP);
  for (const [i, phone] of a.entries()) {
    const row = [(i + 1) * GAP];
    for (const [j, other] of b.entries()) {
      const changed = (above[j] ?? 0) + phoneDistance(phone, other);
      row.push(Math.min(changed, (above[j + 1] ?? 0) + GAP, (row[j] ?? 0) + GAP));
    }
    above = row;
  }
  return (above[b.length] ?? 0) / Math.max(1, a.length, b.length);
}

export interface Alike {
  readonly a: string;
  readonly b: string;
  readonly distance: number;
}

/** Every pair of phrases with how unlike they sound in their most alike pronunciations, likest first. */
export function alikePairs(
  phrases: readonly string[],
  dictionary: Pronunciations,
  extra: ExtraPronunciations = {},
): readonly Alike[] {
  const rows = phrases.map((phrase) => ({ phrase, rows: rowsOf(phrase, dictionary, extra) }));
  const pairs = rows.flatMap((first, i) =>
    rows.slice(i + 1).map((second) => ({
      a: first.phrase,
      b: second.phrase,
      distance: Math.min(
        ...first.rows.flatMap((row) => second.rows.map((other) => rowDistance(row, other))),
      ),
    })),
  );
  return pairs.sort((x, y) => x.distance - y.distance);
}

/** Those of the phrases that are no nearer than `limit` to any other of them, in their order. */
export function apartOnly(
  phrases: readonly string[],
  dictionary: Pronunciations,
  extra: ExtraPronunciations,
  limit: number,
): readonly string[] {
  const near = new Set(
    alikePairs(phrases, dictionary, extra).flatMap(({ a, b, distance }) =>
      distance < limit ? [a, b] : [],
    ),
  );
  return phrases.filter((phrase) => !near.has(phrase));
}

/** Only the first two ways of each word: a long phrase has too many together. */
const WAYS = 2;

function rowsOf(
  phrase: string,
  dictionary: Pronunciations,
  extra: ExtraPronunciations,
): readonly (readonly string[])[] {
  let rows: string[][] = [[]];
  for (const word of phraseWords(phrase)) {
    const ways = pronunciationsOf(word, dictionary, extra).slice(0, WAYS);
    rows = rows.flatMap((row) => ways.map((way) => [...row, ...way.split(' ')]));
  }
  return rows;
}
