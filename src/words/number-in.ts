/** Numbers as they are said or typed, read into exact values in the unit that is wanted. */
import type { Language } from '../texts/index.ts';
import { decimalsOf, toNumber } from './exact.ts';
import { TEENS, TENS, UNITS_WORDS, ZERO_WORDS } from './number-lexicon.ts';
import { sayNumber } from './number-out.ts';
import {
  fineEnough,
  impliesPoints,
  inRange,
  type Reading,
  ranked,
  readingsOf,
  type WantedNumber,
  withoutDoubtfulMils,
} from './number-readings.ts';
import { saidNumbers } from './number-terms.ts';
import { numberWords } from './number-text.ts';
import { inUnit } from './number-units.ts';
import { readSpoken } from './spoken-number.ts';
import { unitOf } from './units-spoken.ts';

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

const MOST_READINGS = 5;
const LONGEST_DECIMAL = 9;

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
export function readNumber(
  text: string,
  wanted?: WantedNumber,
  language?: Language,
): SpokenNumber[] {
  if (language?.spoken) return readSpoken(text, wanted, language, language.spoken);
  const words = numberWords(text, wanted?.decimals === 0);
  const unit = wanted === undefined ? null : unitOf(wanted.unit);
  if (words === null || soundsOnly(words)) return [];
  const readings = saidNumbers(words, impliesPoints(wanted)).flatMap((span) =>
    readingsOf(span, unit, wanted),
  );
  return ranked(withoutDoubtfulMils(readings, wanted), wanted)
    .flatMap((reading) => spokenNumber(reading, wanted))
    .slice(0, MOST_READINGS);
}
