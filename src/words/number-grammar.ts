/** Reads amounts out of a row of words. Every rule gives all its readings; nothing is decided here. */
import { compare, type Exact, exact, fromDecimalText, ONE, plus, times } from './exact.ts';
import {
  INNER_ZERO_WORDS,
  POINTS,
  RULE_PARTS,
  TEENS,
  TEN_PARTS,
  TENS,
  UNITS_WORDS,
  ZERO_WORDS,
} from './number-lexicon.ts';

/** One reading of the words from a place on: what it is, where it ends, and how far-fetched it is (0 plain). */
export interface Span<T> {
  readonly is: T;
  readonly end: number;
  readonly cost: number;
}

export type Words = readonly string[];

/** How an amount was said, for those who must know what it may stand for. */
export interface Amount {
  readonly count: Exact;
  /** whole: no point and no parts; decimal; rule: parts an inch rule has; tens: so many tenths, hundredths … */
  readonly form: 'whole' | 'decimal' | 'rule' | 'tens';
  /** For `tens`, the part; else 1. */
  readonly part: 1 | 10 | 100 | 1000 | 10000;
  /** True when the point was not said and only a range can justify it. */
  readonly impliedPoint: boolean;
  /** Finer than a quarter: a division that only inches have. */
  readonly fine: boolean;
}

const SHORT_COST = 0.2;
const RUN_COST = 0.1;
const US_COST = 0.05;
const IMPLIED_COST = 0.6;
const MOST_DIGITS = 9;
const ARTICLES = new Set(['a', 'an']);

function span<T>(is: T, end: number, cost: number): Span<T> {
  return { is, end, cost };
}

function word(words: Words, at: number): string {
  return words[at] ?? '';
}

/** "five", "5", "zero", "oh" as one digit. */
function digit(words: Words, at: number): Span<string>[] {
  const here = word(words, at);
  if (/^\d$/.test(here)) return [span(here, at + 1, 0)];
  if (INNER_ZERO_WORDS.has(here)) return [span('0', at + 1, 0)];
  const found = UNITS_WORDS.get(here) ?? ZERO_WORDS.get(here);
  return found === undefined ? [] : [span(String(found.is), at + 1, found.cost)];
}

function nonZero(words: Words, at: number): Span<string>[] {
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

function belowHundred(words: Words, at: number): Span<number>[] {
  return [...nonZero(words, at), ...pair(words, at)].map((found) =>
    span(Number(found.is), found.end, found.cost),
  );
}

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

function hundreds(words: Words, at: number): Span<number>[] {
  return scaled(words, heads(words, at), 'hundred', 100, belowHundred);
}

function thousands(words: Words, at: number): Span<number>[] {
  const before = [...heads(words, at), ...hundreds(words, at)];
  return scaled(words, before, 'thousand', 1000, (row, from) => [
    ...hundreds(row, from),
    ...belowHundred(row, from),
  ]);
}

/** Whole numbers said in full: "four hundred and fifty", "fourteen hundred", "1400". */
function cardinal(words: Words, at: number): Span<string>[] {
  const here = word(words, at);
  const figures = /^\d{1,9}$/.test(here) ? [span(String(Number(here)), at + 1, 0)] : [];
  const spoken = [...belowHundred(words, at), ...hundreds(words, at), ...thousands(words, at)];
  return [
    ...figures,
    ...spoken
      .filter((found) => !(found.end === at + 1 && figures.length > 0))
      .map((found) => span(String(found.is), found.end, found.cost)),
  ];
}

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
function digitRun(words: Words, at: number): Span<string>[] {
  return digitRows(words, at, (row, from) => [...digit(row, from), ...doubled(row, from)])
    .filter((row) => row.is.length > 1 && row.is[0] !== '0')
    .map((row) => span(row.is, row.end, row.cost + RUN_COST));
}

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
function behindPoint(words: Words, at: number): Span<string>[] {
  return digitRows(words, at, (row, from) => {
    const round = nonZero(row, from)
      .filter((found) => word(row, found.end) === 'hundred')
      .map((found) => span(`${found.is}00`, found.end + 1, found.cost));
    const figures = /^\d{3,9}$/.test(word(row, from)) ? [span(word(row, from), from + 1, 0)] : [];
    return [...digit(row, from), ...doubled(row, from), ...pair(row, from), ...round, ...figures];
  });
}

function wholes(words: Words, at: number): Span<string>[] {
  return [...cardinal(words, at), ...short(words, at), ...digitRun(words, at)];
}

function amount(digits: string, form: Amount['form'], impliedPoint = false): Amount {
  return { count: fromDecimalText(digits) ?? exact(0), form, part: 1, impliedPoint, fine: false };
}

/** Before the point: a whole number, any zero, or nothing. */
function decimals(words: Words, at: number): Span<Amount>[] {
  const before = [
    ...wholes(words, at),
    ...digit(words, at).filter((found) => found.is === '0'),
    span('0', at, 0),
  ];
  const said = before
    .filter((whole) => POINTS.has(word(words, whole.end)))
    .flatMap((whole) =>
      behindPoint(words, whole.end + 1).map((part) =>
        span(amount(`${whole.is}.${part.is}`, 'decimal'), part.end, whole.cost + part.cost),
      ),
    );
  const figures = /^\d{0,9}\.\d{0,9}$/.test(word(words, at))
    ? fromDecimalText(word(words, at))
    : null;
  return figures === null ? said : [...said, span(amount(word(words, at), 'decimal'), at + 1, 0)];
}

/** "twenty four nine five" for 24.95: the point left out. Only a range can justify it. */
function implied(words: Words, at: number): Span<Amount>[] {
  const before = [...cardinal(words, at), ...digitRun(words, at), ...nonZero(words, at)];
  return before
    .filter((whole) => !['hundred', 'thousand'].includes(word(words, whole.end - 1)))
    .flatMap((whole) =>
      behindPoint(words, whole.end).map((part) =>
        span(
          amount(`${whole.is}.${part.is}`, 'decimal', true),
          part.end,
          whole.cost + part.cost + IMPLIED_COST,
        ),
      ),
    );
}

function named<T>(words: Words, at: number, names: ReadonlyMap<string, T>): Span<T>[] {
  return [1, 2].flatMap((length) => {
    const found = names.get(words.slice(at, at + length).join(' '));
    return at + length <= words.length && found !== undefined ? [span(found, at + length, 0)] : [];
  });
}

function ruleAmount(top: bigint | number, bottom: number): Amount {
  return {
    count: exact(top, bottom),
    form: 'rule',
    part: 1,
    impliedPoint: false,
    fine: bottom > 4,
  };
}

/** "three eighths", "a half", "half", "3/8", "7 32nds". */
export function ruleParts(words: Words, at: number): Span<Amount>[] {
  const figures = /^(\d{1,3})\/(2|4|8|16|32|64)$/.exec(word(words, at));
  if (figures) return [span(ruleAmount(Number(figures[1]), Number(figures[2])), at + 1, 0)];
  const tops = ARTICLES.has(word(words, at)) ? [span('1', at + 1, 0)] : cardinal(words, at);
  const spoken = tops.flatMap((top) =>
    named(words, top.end, RULE_PARTS).map((bottom) =>
      span(ruleAmount(Number(top.is), bottom.is), bottom.end, top.cost),
    ),
  );
  const bare = named(words, at, RULE_PARTS)
    .filter((found) => found.is <= 4)
    .map((found) => span(ruleAmount(1, found.is), found.end, 0));
  return [...spoken, ...bare];
}

/** "one and three eighths", "1 3/8", "four ninety eight and a half". */
function mixed(words: Words, at: number): Span<Amount>[] {
  return wholes(words, at).flatMap((whole) => {
    const joined = word(words, whole.end) === 'and';
    const figures = word(words, whole.end).includes('/');
    return ruleParts(words, joined ? whole.end + 1 : whole.end)
      .filter((part) => compare(part.is.count, ONE) < 0)
      .filter(() => joined || !ARTICLES.has(word(words, whole.end)))
      .map((part) => {
        const count = plus(fromDecimalText(whole.is) ?? exact(0), part.is.count);
        return span(
          { ...part.is, count },
          part.end,
          whole.cost + part.cost + (joined || figures ? 0 : SHORT_COST),
        );
      });
  });
}

/** "two hundredths", "a tenth", "half a tenth", "two and a half hundredths". */
function tenParts(words: Words, at: number): Span<Amount>[] {
  const article = ARTICLES.has(word(words, at)) ? [span(ONE, at + 1, 0)] : [];
  const halves = ruleParts(words, at)
    .filter((half) => !half.is.fine && word(words, half.end) === 'a')
    .map((half) => span(half.is.count, half.end + 1, half.cost));
  const counts = [...plain(words, at), ...mixed(words, at)].map((found) =>
    span(found.is.count, found.end, found.cost),
  );
  return [...article, ...halves, ...counts].flatMap((count) =>
    named(words, count.end, TEN_PARTS).map((part) =>
      span(tenAmount(count.is, part.is), part.end, count.cost),
    ),
  );
}

function tenAmount(count: Exact, part: 10 | 100 | 1000 | 10000): Amount {
  return { count: times(count, ONE), form: 'tens', part, impliedPoint: false, fine: false };
}

function plain(words: Words, at: number): Span<Amount>[] {
  const zero = ZERO_WORDS.get(word(words, at));
  const zeros = zero === undefined ? [] : [span(amount('0', 'whole'), at + 1, zero.cost)];
  const whole = wholes(words, at).map((found) =>
    span(amount(found.is, 'whole'), found.end, found.cost),
  );
  return [...zeros, ...whole, ...decimals(words, at)];
}

/** Every amount that starts at this place. */
export function amounts(words: Words, at: number): Span<Amount>[] {
  return [
    ...plain(words, at),
    ...ruleParts(words, at),
    ...mixed(words, at),
    ...tenParts(words, at),
    ...implied(words, at),
  ];
}
