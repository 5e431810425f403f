/** An amount with the unit said after it: the pieces that one spoken number is made of. */
import { compare, type Exact, ONE, plus } from './exact.ts';
import { type Amount, amounts, ruleParts } from './number-amounts.ts';
import { MILS, SIGNS, THOU_ALIKE } from './number-lexicon.ts';
import { remembered, type Span, type Words } from './number-wholes.ts';
import { LONGEST_UNIT_NAME, type Unit, unitOf, unitsHeard } from './units-spoken.ts';

export interface Term {
  readonly amount: Amount;
  /** Null when no unit was said. */
  readonly unit: Unit | null;
  /** "of a millimetre": the amount is a part of one unit. */
  readonly ofOne: boolean;
  /** The unit was said as "mil", which has two meanings. */
  readonly mil: boolean;
}

export interface SaidNumber {
  readonly sign: 1 | -1;
  readonly first: Term;
  /** "one inch and twenty thou", "seven degrees thirty minutes". */
  readonly second: Term | null;
  /** The second piece was joined with "and". */
  readonly joined: boolean;
}

const ARTICLES = new Set(['a', 'an']);
const NO_ARTICLE_COST = 0.2;
const NO_AND_COST = 0.1;
const ALIKE_COST = 0.4;
/** "One hundred and five hundredths" is 105 of them before it is 100 and 5. */
const NO_UNIT_COST = 0.1;

interface SaidUnit {
  readonly unit: Unit;
  readonly mil: boolean;
}

/** The units whose names start at this place. */
const unitNames = remembered<SaidUnit>((words, at) => {
  const here = words[at] ?? '';
  const alike = MILS.has(here) ? ['mm', 'thou'] : THOU_ALIKE.has(here) ? ['thou'] : [];
  const guessed = alike.flatMap((id) => {
    const unit = unitOf(id);
    return unit === null
      ? []
      : [{ is: { unit, mil: MILS.has(here) }, end: at + 1, cost: ALIKE_COST }];
  });
  const named: Span<SaidUnit>[] = [];
  for (let length = 1; length <= LONGEST_UNIT_NAME && at + length <= words.length; length++) {
    for (const unit of unitsHeard(words.slice(at, at + length).join(' '))) {
      named.push({ is: { unit, mil: false }, end: at + length, cost: 0 });
    }
  }
  return [...named, ...guessed];
});

/** "twenty five thou", "half an inch", "two hundredths of a millimetre", or an amount alone. */
function counted(words: Words, at: number, withImplied: boolean): Span<Term>[] {
  return amounts(words, at, withImplied).flatMap((amount) => {
    const alone = { amount: amount.is, unit: null, ofOne: false, mil: false };
    const ofOne = words[amount.end] === 'of';
    const past = ofOne ? amount.end + 1 : amount.end;
    const article = ARTICLES.has(words[past] ?? '') && (ofOne || amount.is.form === 'rule');
    const units = unitNames(words, article ? past + 1 : past).map((name) => ({
      is: { amount: amount.is, ...name.is, ofOne },
      end: name.end,
      cost: amount.cost + name.cost,
    }));
    return [{ is: alone, end: amount.end, cost: amount.cost }, ...units];
  });
}

/** "a thou", "an inch", and "inch" before "and a half". */
function single(words: Words, at: number): Span<Term>[] {
  const article = ARTICLES.has(words[at] ?? '');
  const one: Amount = { count: ONE, form: 'whole', part: 1, impliedPoint: false, fine: false };
  return unitNames(words, article ? at + 1 : at)
    .filter((name) => article || words[name.end] === 'and')
    .map((name) => ({
      is: { amount: one, ...name.is, ofOne: false },
      end: name.end,
      cost: name.cost + (article ? 0 : NO_ARTICLE_COST),
    }));
}

function withPart(term: Term, part: Exact): Term {
  return { ...term, amount: { ...term.amount, count: plus(term.amount.count, part) } };
}

/** "a millimetre and a half", "two inches three eighths": a part of the unit said after it. */
function withParts(words: Words, term: Span<Term>): Span<Term>[] {
  if (term.is.unit === null || term.is.amount.form !== 'whole') return [];
  const joined = words[term.end] === 'and';
  return ruleParts(words, joined ? term.end + 1 : term.end)
    .filter((part) => compare(part.is.count, ONE) < 0)
    .map((part) => ({
      is: withPart(term.is, part.is.count),
      end: part.end,
      cost: term.cost + part.cost + (joined ? 0 : NO_AND_COST),
    }));
}

function terms(words: Words, at: number, withImplied: boolean): Span<Term>[] {
  const plain = [...counted(words, at, withImplied), ...single(words, at)];
  return [...plain, ...plain.flatMap((term) => withParts(words, term))];
}

/** The terms from a place to the end of the row. Many first pieces end at one place, so each place is read once. */
function lastTerms(words: Words, withImplied: boolean): (at: number) => readonly Span<Term>[] {
  const ready = new Map<number, Span<Term>[]>();
  return (at) => {
    const found =
      ready.get(at) ?? terms(words, at, withImplied).filter((term) => term.end === words.length);
    ready.set(at, found);
    return found;
  };
}

/** Every way the whole row of words is one number, in no order. `withImplied` puts back points that were left out. */
export function saidNumbers(words: Words, withImplied: boolean): Span<SaidNumber>[] {
  const sign = SIGNS.get(words[0] ?? '');
  const start = sign === undefined ? 0 : 1;
  const found: Span<SaidNumber>[] = [];
  const seconds = lastTerms(words, withImplied);
  for (const first of terms(words, start, withImplied)) {
    const joined = words[first.end] === 'and';
    if (first.end === words.length) found.push(said(sign, first, null, false));
    else {
      const follow = seconds(joined ? first.end + 1 : first.end);
      found.push(...follow.map((second) => said(sign, first, second, joined)));
    }
  }
  return found;
}

function said(
  sign: 1 | -1 | undefined,
  first: Span<Term>,
  second: Span<Term> | null,
  joined: boolean,
): Span<SaidNumber> {
  return {
    is: { sign: sign ?? 1, first: first.is, second: second?.is ?? null, joined },
    end: second?.end ?? first.end,
    cost:
      first.cost +
      (second?.cost ?? 0) +
      (second !== null && first.is.unit === null ? NO_UNIT_COST : 0),
  };
}
