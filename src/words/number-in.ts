/** Numbers as they are said or typed, read into exact values in the unit that is wanted. */
import { compare, decimalsOf, type Exact, exact, fromNumber, over, toNumber } from './exact.ts';
import type { Span } from './number-grammar.ts';
import { TEENS, TENS, UNITS_WORDS, ZERO_WORDS } from './number-lexicon.ts';
import { sayNumber } from './number-out.ts';
import { type SaidNumber, saidNumbers } from './number-terms.ts';
import { numberWords } from './number-text.ts';
import { inUnit, sizeOf } from './number-units.ts';
import { type Unit, unitOf } from './units-spoken.ts';

/** The number a step waits for. The range and the decimals put the readings in order; they refuse nothing plain. */
export interface WantedNumber {
  readonly unit: string;
  readonly min?: number;
  readonly max?: number;
  readonly decimals?: number;
}

export interface SpokenNumber {
  /** In `unit`: the double nearest to `exact`. */
  readonly value: number;
  /** The wanted unit as the caller writes it; without one, the unit that was said, or "" when none was. */
  readonly unit: string;
  /** The unit that was said or plainly meant (sixteenths are of an inch), or "" when none was. */
  readonly said: string;
  /** The value as a fraction in lowest terms, both parts safe integers. */
  readonly exact: { readonly numerator: number; readonly denominator: number };
  /** The value in words with its unit: "twenty-four point nine five millimetres". */
  readonly text: string;
  /** Inside the wanted range and no finer than the wanted decimals. */
  readonly fits: boolean;
  /** 0 for plain speech; higher the more had to be assumed. */
  readonly cost: number;
}

/** One reading before it is ranked. */
interface Reading {
  readonly value: Exact;
  readonly said: Unit | null;
  readonly unit: Unit | null;
  readonly cost: number;
  /** Only a range can justify it, and this range does. */
  readonly assumed: boolean;
  readonly mil: boolean;
}

const THOU_IMPLIED_COST = 0.8;
const TOO_FINE_COST = 0.15;
const OUT_OF_RANGE_COST = 10;
const MOST_READINGS = 5;
const LONGEST_DECIMAL = 9;

function inRange(value: Exact, wanted: WantedNumber | undefined): boolean {
  const low = wanted?.min === undefined ? null : fromNumber(wanted.min);
  const high = wanted?.max === undefined ? null : fromNumber(wanted.max);
  return (low === null || compare(value, low) >= 0) && (high === null || compare(value, high) <= 0);
}

function hasRange(wanted: WantedNumber | undefined): boolean {
  return wanted?.min !== undefined && wanted.max !== undefined;
}

function fineEnough(value: Exact, wanted: WantedNumber | undefined): boolean {
  const decimals = decimalsOf(value);
  return wanted?.decimals === undefined || (decimals !== null && decimals <= wanted.decimals);
}

/** A point left out is put back only where a whole range and a count of decimals say so. */
function mayImply(value: Exact, wanted: WantedNumber | undefined): boolean {
  return (
    wanted?.decimals !== undefined &&
    hasRange(wanted) &&
    inRange(value, wanted) &&
    fineEnough(value, wanted)
  );
}

function readingsOf(
  span: Span<SaidNumber>,
  unit: Unit | null,
  wanted: WantedNumber | undefined,
): Reading[] {
  const sized = sizeOf(span.is, unit);
  if (sized === null) return [];
  const value =
    unit === null || sized.unit === null ? sized.value : inUnit(sized.value, sized.unit, unit);
  if (value === null) return [];
  const { first, second } = span.is;
  const assumed = first.amount.impliedPoint || second?.amount.impliedPoint === true;
  if (assumed && !mayImply(value, wanted)) return [];
  const named = first.unit !== null || sized.unit !== unit;
  const reading: Reading = {
    value,
    said: named ? sized.unit : null,
    unit: unit ?? sized.unit,
    cost: span.cost,
    assumed,
    mil: first.mil || second?.mil === true,
  };
  return [reading, ...impliedThou(reading, span.is, wanted)];
}

/** "nine eighty" for 0.980 in: whole numbers meant as thou, when only so they fall in the wanted range. */
function impliedThou(
  reading: Reading,
  said: SaidNumber,
  wanted: WantedNumber | undefined,
): Reading[] {
  const { form, fine } = said.first.amount;
  const bare = said.first.unit === null && said.second === null && !reading.assumed;
  if (!bare || form === 'decimal' || form === 'tens' || fine || !reading.unit?.id.startsWith('in'))
    return [];
  const value = over(reading.value, exact(1000));
  if (!hasRange(wanted) || inRange(reading.value, wanted) || !inRange(value, wanted)) return [];
  return [
    {
      ...reading,
      value,
      said: unitOf('thou'),
      cost: reading.cost + THOU_IMPLIED_COST,
      assumed: true,
    },
  ];
}

/** "Mil" stands only where a range leaves one of its two meanings. */
function withoutDoubtfulMils(
  readings: readonly Reading[],
  wanted: WantedNumber | undefined,
): Reading[] {
  const mils = readings.filter(
    (reading) => reading.mil && hasRange(wanted) && inRange(reading.value, wanted),
  );
  const meanings = new Set(mils.map((reading) => reading.said?.id));
  return readings.filter(
    (reading) => !reading.mil || (meanings.size === 1 && mils.includes(reading)),
  );
}

function textOf(reading: Reading, wanted: WantedNumber | undefined): string {
  const unit = wanted?.unit ?? reading.unit?.id ?? '';
  const decimals = decimalsOf(reading.value);
  if (decimals !== null && decimals <= LONGEST_DECIMAL)
    return sayNumber(toNumber(reading.value), unit, decimals);
  const { said, unit: wantedUnit } = reading;
  const back =
    said !== null && wantedUnit !== null ? inUnit(reading.value, wantedUnit, said) : null;
  const shown = back === null ? LONGEST_DECIMAL : decimalsOf(back);
  if (back === null || said === null || shown === null)
    return sayNumber(toNumber(reading.value), unit, LONGEST_DECIMAL);
  return sayNumber(toNumber(back), said.id, shown);
}

function spokenNumber(reading: Reading, wanted: WantedNumber | undefined): SpokenNumber[] {
  const exactly = {
    numerator: Number(reading.value.top),
    denominator: Number(reading.value.bottom),
  };
  if (!Number.isSafeInteger(exactly.numerator) || !Number.isSafeInteger(exactly.denominator))
    return [];
  return [
    {
      value: toNumber(reading.value),
      unit: wanted?.unit ?? reading.unit?.id ?? '',
      said: reading.said?.id ?? '',
      exact: exactly,
      text: textOf(reading, wanted),
      fits: inRange(reading.value, wanted) && fineEnough(reading.value, wanted),
      cost: reading.cost,
    },
  ];
}

function ranked(readings: readonly Reading[], wanted: WantedNumber | undefined): Reading[] {
  const rank = ({ value, cost }: Reading) =>
    cost +
    (inRange(value, wanted) ? 0 : OUT_OF_RANGE_COST) +
    (fineEnough(value, wanted) ? 0 : TOO_FINE_COST);
  const seen = new Set<string>();
  return [...readings]
    .sort((a, b) => rank(a) - rank(b))
    .filter(({ value, unit }) => {
      const key = `${value.top}/${value.bottom} ${unit?.id}`;
      return !seen.has(key) && seen.add(key);
    });
}

/** Words that only sound like numbers ("to", "for") make a number only beside one that is. */
function soundsOnly(words: readonly string[]): boolean {
  const alike = words.filter((word) => (UNITS_WORDS.get(word) ?? ZERO_WORDS.get(word))?.cost);
  const own = words.some(
    (word) =>
      /\d/.test(word) ||
      TEENS.has(word) ||
      TENS.has(word) ||
      (UNITS_WORDS.get(word) ?? ZERO_WORDS.get(word))?.cost === 0,
  );
  return alike.length > 0 && !own && !words.some((word) => SOLID.has(word));
}

const SOLID = new Set([
  'point',
  'hundred',
  'thousand',
  'half',
  'quarter',
  'quarters',
  'hundredths',
  'tenths',
  'thou',
]);

/**
 * Every sensible reading of a spoken or typed number, best first; empty when it is not a number, when its unit does
 * not measure what is wanted, or when a figure could be read two ways a thousandfold apart ("24,95").
 *
 * A unit that was said is converted exactly (1 inch = 25.4 mm). Readings inside the wanted range come first. A point
 * left out ("twenty-four nine five"), thou left out ("nine eighty" for 0.980 in) and "mil" are read only where the
 * range leaves one meaning. Nothing is rounded.
 */
export function readNumber(text: string, wanted?: WantedNumber): SpokenNumber[] {
  const words = numberWords(text);
  const unit = wanted === undefined ? null : unitOf(wanted.unit);
  if (words === null || soundsOnly(words)) return [];
  const readings = saidNumbers(words).flatMap((span) => readingsOf(span, unit, wanted));
  return ranked(withoutDoubtfulMils(readings, wanted), wanted)
    .flatMap((reading) => spokenNumber(reading, wanted))
    .slice(0, MOST_READINGS);
}
