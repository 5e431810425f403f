/** Reads whole numbers and rows of digits out of a row of words. Every rule gives all its readings. */
import { INNER_ZERO_WORDS, TEENS, TENS, UNITS_WORDS, ZERO_WORDS } from './number-lexicon.ts';

/** One reading of the words from a place on: what it is, where it ends, and how far-fetched it is (0 plain). */
export interface Span<T> {
  readonly is: T;
  readonly end: number;
  readonly cost: number;
}

export type Words = readonly string[];

/** "four fifty": hundreds left out. */
const SHORT_COST = 0.2;
/** "four five oh": digits in a row. */
const RUN_COST = 0.1;
/** "four hundred fifty": no "and". */
const US_COST = 0.05;
const MOST_DIGITS = 9;

export type Rule<T> = (words: Words, at: number) => Span<T>[];

/** The rule with a memory: many rules start at the same word and ask for the same pieces. */
export function remembered<T>(rule: Rule<T>): Rule<T> {
  const rows = new WeakMap<Words, Map<number, Span<T>[]>>();
  return (words, at) => {
    const row = rows.get(words) ?? new Map<number, Span<T>[]>();
    rows.set(words, row);
    const found = row.get(at) ?? rule(words, at);
    row.set(at, found);
    return found;
  };
}

export function span<T>(is: T, end: number, cost: number): Span<T> {
  return { is, end, cost };
}

export function word(words: Words, at: number): string {
  return words[at] ?? '';
}

/** "five", "5", "zero", "oh" as one digit. */
export function digit(words: Words, at: number): Span<string>[] {
  const here = word(words, at);
  if (/^\d$/.test(here)) return [span(here, at + 1, 0)];
  if (INNER_ZERO_WORDS.has(here)) return [span('0', at + 1, 0)];
  const found = UNITS_WORDS.get(here) ?? ZERO_WORDS.get(here);
  return found === undefined ? [] : [span(String(found.is), at + 1, found.cost)];
}

export function nonZero(words: Words, at: number): Span<string>[] {
  return digit(words, at).filter((found) => found.is !== '0');
}

/** "double five" as two digits. */
function doubled(words: Words, at: number): Span<string>[] {
  if (word(words, at) !== 'double') return [];
  return digit(words, at + 1).map((found) => span(found.is + found.is, found.end, found.cost));
}

/** Two digits said as one number: "fifteen", "twenty four", "24". */
function pair(words: Words, at: number): Span<string>[] {
  const here = word(words, at);
  if (/^\d\d$/.test(here)) return [span(here, at + 1, 0)];
  const teen = TEENS.get(here);
  if (teen !== undefined) return [span(String(teen.is), at + 1, teen.cost)];
  const tens = TENS.get(here);
  if (tens === undefined) return [];
  const units = nonZero(words, at + 1).filter(() => !/^\d/.test(word(words, at + 1)));
  if (units.length === 0) return [span(String(tens.is), at + 1, 0)];
  return units.map((unit) => span(String(tens.is + Number(unit.is)), unit.end, unit.cost));
}

const belowHundred = remembered<number>((words, at) => {
  return [...nonZero(words, at), ...pair(words, at)].map((found) =>
    span(Number(found.is), found.end, found.cost),
  );
});

/** What may follow hundred or thousand: "and five", "five" (the American way). */
function tail(
  words: Words,
  at: number,
  small: (words: Words, at: number) => Span<number>[],
): Span<number>[] {
  const joined = word(words, at) === 'and';
  return small(words, joined ? at + 1 : at).map((found) =>
    span(found.is, found.end, found.cost + (joined ? 0 : US_COST)),
  );
}

function scaled(
  words: Words,
  heads: readonly Span<number>[],
  name: string,
  size: number,
  small: (words: Words, at: number) => Span<number>[],
): Span<number>[] {
  return heads
    .filter((head) => word(words, head.end) === name)
    .flatMap((head) => {
      const round = span(head.is * size, head.end + 1, head.cost);
      const more = tail(words, round.end, small).map((rest) =>
        span(round.is + rest.is, rest.end, round.cost + rest.cost),
      );
      return [round, ...more];
    });
}

/** "a", "one" or nothing before hundred and thousand. */
function heads(words: Words, at: number): Span<number>[] {
  const here = word(words, at);
  if (here === 'a') return [span(1, at + 1, 0)];
  if (here === 'hundred' || here === 'thousand') return [span(1, at, US_COST)];
  return belowHundred(words, at);
}

const hundreds = remembered<number>((words, at) => {
  return scaled(words, heads(words, at), 'hundred', 100, belowHundred);
});

function thousands(words: Words, at: number): Span<number>[] {
  const before = [...heads(words, at), ...hundreds(words, at)];
  return scaled(words, before, 'thousand', 1000, (row, from) => [
    ...hundreds(row, from),
    ...belowHundred(row, from),
  ]);
}

/** Whole numbers said in full: "four hundred and fifty", "fourteen hundred", "1400". */
export const cardinal = remembered<string>((words, at) => {
  const here = word(words, at);
  const figures = /^\d{1,9}$/.test(here) ? [span(String(Number(here)), at + 1, 0)] : [];
  const spoken = [...belowHundred(words, at), ...hundreds(words, at), ...thousands(words, at)];
  return [
    ...figures,
    ...spoken
      .filter((found) => !(found.end === at + 1 && figures.length > 0))
      .map((found) => span(String(found.is), found.end, found.cost)),
  ];
});

/** "four fifty", "fourteen fifty", "four oh five": hundreds left out. */
function short(words: Words, at: number): Span<string>[] {
  return belowHundred(words, at).flatMap((head) => {
    const inner = INNER_ZERO_WORDS.has(word(words, head.end))
      ? nonZero(words, head.end + 1).map((unit) => span(`0${unit.is}`, unit.end, unit.cost))
      : pair(words, head.end);
    return inner.map((rest) =>
      span(`${head.is}${rest.is}`, rest.end, head.cost + rest.cost + SHORT_COST),
    );
  });
}

/** Single digits in a row, at least two, the first not zero: "four five oh". */
export const digitRun = remembered<string>((words, at) => {
  return digitRows(words, at, (row, from) => [...digit(row, from), ...doubled(row, from)])
    .filter((row) => row.is.length > 1 && row.is[0] !== '0')
    .map((row) => span(row.is, row.end, row.cost + RUN_COST));
});

/** Every row of pieces that starts here: one piece, two, three … */
function digitRows(
  words: Words,
  at: number,
  piece: (words: Words, at: number) => Span<string>[],
): Span<string>[] {
  const rows: Span<string>[] = [];
  let open: Span<string>[] = [span('', at, 0)];
  while (open.length > 0) {
    open = open.flatMap((row) =>
      piece(words, row.end)
        .map((next) => span(row.is + next.is, next.end, row.cost + next.cost))
        .filter((next) => next.is.length <= MOST_DIGITS),
    );
    rows.push(...open);
  }
  return rows;
}

/** Digits behind the point: singly, doubled, in pairs ("ninety five"), by the hundred ("nine hundred"), or as figures. */
export const behindPoint = remembered<string>((words, at) => {
  return digitRows(words, at, (row, from) => {
    const round = nonZero(row, from)
      .filter((found) => word(row, found.end) === 'hundred')
      .map((found) => span(`${found.is}00`, found.end + 1, found.cost));
    const figures = /^\d{3,9}$/.test(word(row, from)) ? [span(word(row, from), from + 1, 0)] : [];
    return [...digit(row, from), ...doubled(row, from), ...pair(row, from), ...round, ...figures];
  });
});

export const wholes = remembered<string>((words, at) => {
  return [...cardinal(words, at), ...short(words, at), ...digitRun(words, at)];
});
