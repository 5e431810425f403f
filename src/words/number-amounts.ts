/** Reads amounts out of a row of words: whole, decimal, or in parts. Nothing is decided here. */
import { compare, type Exact, exact, fromDecimalText, ONE, plus } from './exact.ts';
import { POINTS, RULE_PARTS, TEN_PARTS, ZERO_WORDS } from './number-lexicon.ts';
import {
  behindPoint,
  cardinal,
  digit,
  digitRun,
  nonZero,
  remembered,
  type Span,
  span,
  type Words,
  wholes,
  word,
} from './number-wholes.ts';

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

/** "one three eighths": no "and". */
const NO_AND_COST = 0.2;
const IMPLIED_COST = 0.6;
const ARTICLES = new Set(['a', 'an']);

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
export const ruleParts = remembered<Amount>((words, at) => {
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
});

/** "one and three eighths", "1 3/8", "four ninety eight and a half". */
const mixed = remembered<Amount>((words, at) => {
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
          whole.cost + part.cost + (joined || figures ? 0 : NO_AND_COST),
        );
      });
  });
});

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
  return { count, form: 'tens', part, impliedPoint: false, fine: false };
}

const plain = remembered<Amount>((words, at) => {
  const zero = ZERO_WORDS.get(word(words, at));
  const zeros = zero === undefined ? [] : [span(amount('0', 'whole'), at + 1, zero.cost)];
  const whole = wholes(words, at).map((found) =>
    span(amount(found.is, 'whole'), found.end, found.cost),
  );
  return [...zeros, ...whole, ...decimals(words, at)];
});

/** Every amount that starts at this place; those with the point left out only where they are asked for. */
export function amounts(words: Words, at: number, withImplied: boolean): Span<Amount>[] {
  const said = [
    ...plain(words, at),
    ...ruleParts(words, at),
    ...mixed(words, at),
    ...tenParts(words, at),
  ];
  return withImplied ? [...said, ...implied(words, at)] : said;
}
