/** Values turned into words to be written down, digits to be checked, and figures to be seen. */
import type { Language, Spoken } from '../texts/index.ts';
import { decimalsOf, type Exact, exact, fromNumber, toDecimalText } from './exact.ts';
import { digitsInWords, ordinalOfInteger, wordsOfInteger } from './integer-words.ts';
import { digitsIn, integerIn } from './spoken-integers.ts';
import { unitName, unitOf, unitShown } from './units-spoken.ts';

export interface Manner {
  /** Inches below one are said in thou: "nine hundred and eighty thou". */
  readonly inThou?: boolean;
  /** `sayDigits` only: digits the way aircraft radio says them, "niner", "fife". */
  readonly radio?: boolean;
  /** False leaves the unit out; true says it even where the trade does not (rpm). */
  readonly unit?: boolean;
  /** English without it. */
  readonly language?: Language;
}

const MINUS = '−';
const NO_BREAK = '\u00a0';
const SMALLEST_INCH_PART = 64;

function written(value: number, decimals: number): string | null {
  const given = fromNumber(value);
  return given === null ? null : toDecimalText(given, decimals);
}

function withoutEndZeros(text: string): string {
  return text.includes('.') ? text.replace(/\.?0+$/, '') : text;
}

/** By the table of a language: exactly one has a form with its article, "ein Millimeter". */
function withUnitIn(
  spoken: Spoken,
  text: string,
  inWords: (size: string) => string,
  unit: string,
  manner: Manner,
): string {
  const size = text.replace('-', '');
  const [one = '', many = unit] = spoken.units[unitOf(unit)?.id ?? unit] ?? [];
  const silent = manner.unit === false || many === '';
  const said =
    size === '1' && !silent && one !== ''
      ? one
      : [inWords(size), ...(silent ? [] : [many])].join(' ');
  return text.startsWith('-') ? `${spoken.minus} ${said}` : said;
}

function decimalIn(spoken: Spoken, size: string): string {
  const [whole = '0', part = ''] = size.split('.');
  const words = integerIn(spoken, Number(whole));
  return part === '' ? words : `${words} ${spoken.point} ${digitsIn(spoken, part)}`;
}

function withUnit(words: string, unit: string, one: boolean, manner: Manner): string {
  const silent = manner.unit === undefined ? unitOf(unit)?.silent === true : !manner.unit;
  const name = silent ? '' : unitName(unit, one);
  return name === '' ? words : `${words} ${name}`;
}

function wordsOfDecimal(size: string): string {
  const [whole = '0', part = ''] = size.split('.');
  const words = wordsOfInteger(Number(whole));
  return part === '' ? words : `${words} point ${digitsInWords(part)}`;
}

function spoken(text: string, inWords: (size: string) => string): string {
  return text.startsWith('-') ? `minus ${inWords(text.slice(1))}` : inWords(text);
}

/**
 * The value as words to be written down: "twenty-four point nine five millimetres".
 * `decimals` is the most that is said; zeros at the end are left out. An exact half goes to the even digit
 * (24.945 with two decimals is 24.94). "minus" comes first, the unit once and last; rpm has no unit word.
 * NaN and the infinities are "no number".
 */
export function sayNumber(
  value: number,
  unit: string,
  decimals: number,
  manner: Manner = {},
): string {
  const text = written(value, decimals);
  const spokenIn = manner.language?.spoken;
  if (text === null) return spokenIn?.noNumber ?? 'no number';
  if (spokenIn) {
    const size = (one: string) => decimalIn(spokenIn, one);
    return withUnitIn(spokenIn, withoutEndZeros(text), size, unit, manner);
  }
  const belowOne = value !== 0 && Math.abs(Number(text)) < 1;
  if (manner.inThou === true && belowOne && unitOf(unit)?.id === 'in') {
    return sayNumber(shiftPoint(text, 3), 'thou', Math.max(0, decimals - 3), manner);
  }
  const short = withoutEndZeros(text);
  return withUnit(spoken(short, wordsOfDecimal), unit, /^-?1$/.test(short), manner);
}

function shiftPoint(text: string, places: number): number {
  return Number(`${text}e${places}`);
}

/**
 * The value digit by digit for a read-back: "two four point nine five millimetres".
 * Exactly `decimals` digits after the point, rounded as `sayNumber` rounds.
 */
export function sayDigits(
  value: number,
  unit: string,
  decimals: number,
  manner: Manner = {},
): string {
  const text = written(value, decimals);
  const spokenIn = manner.language?.spoken;
  if (text === null) return spokenIn?.noNumber ?? 'no number';
  if (spokenIn) {
    return withUnitIn(spokenIn, text, (size) => digitsIn(spokenIn, size), unit, manner);
  }
  const words = spoken(text, (size) => digitsInWords(size, manner.radio));
  return withUnit(words, unit, /^-?1$/.test(text), manner);
}

/**
 * The value as a figure with its unit: "24.95 mm", "−0.02 mm", "450 rpm", "7.5°".
 * Exactly `decimals` digits, a true minus, a space that does not break (none before a degree sign, ISO 80000-1).
 */
export function showNumber(
  value: number,
  unit: string,
  decimals: number,
  language?: Language,
): string {
  const text = written(value, decimals);
  if (text === null) return '–';
  const sign = language?.spoken?.decimalSign ?? '.';
  const figure = text.replace('-', MINUS).replace('.', sign);
  const name = language?.spoken?.unitsShown[unitOf(unit)?.id ?? unit] ?? unitShown(unit);
  if (name === '') return figure;
  return /^[°′″]$/.test(name) ? figure + name : `${figure}${NO_BREAK}${name}`;
}

interface InchParts {
  readonly minus: boolean;
  readonly whole: number;
  readonly top: number;
  readonly bottom: number;
}

function inchParts(value: number): InchParts | null {
  const given = fromNumber(value);
  if (given === null || decimalsOf(given) === null) return null;
  const size: Exact = given.top < 0n ? exact(-given.top, given.bottom) : given;
  if (BigInt(SMALLEST_INCH_PART) % size.bottom !== 0n) return null;
  return {
    minus: given.top < 0n,
    whole: Number(size.top / size.bottom),
    top: Number(size.top % size.bottom),
    bottom: Number(size.bottom),
  };
}

function partName(top: number, bottom: number): string {
  if (bottom === 2) return 'a half';
  const name = bottom === 4 ? 'quarter' : ordinalOfInteger(bottom);
  return top === 1 ? `${bottom === 8 ? 'an' : 'a'} ${name}` : `${wordsOfInteger(top)} ${name}s`;
}

/** Inches as a spoken fraction, "one and three eighths inches", "seven thirty-seconds of an inch"; null when finer than a sixty-fourth. */
export function sayFraction(inches: number): string | null {
  const parts = inchParts(inches);
  if (parts === null) return null;
  const sign = parts.minus ? 'minus ' : '';
  if (parts.top === 0)
    return `${sign}${wordsOfInteger(parts.whole)} ${unitName('in', parts.whole === 1)}`;
  const part = partName(parts.top, parts.bottom);
  if (parts.whole === 0) return `${sign}${part} of an inch`;
  return `${sign}${wordsOfInteger(parts.whole)} and ${part} inches`;
}

/** Inches as a shown fraction, "1 3/8 in"; null when finer than a sixty-fourth. */
export function showFraction(inches: number): string | null {
  const parts = inchParts(inches);
  if (parts === null) return null;
  const figures = [
    parts.whole > 0 || parts.top === 0 ? `${parts.whole}` : '',
    parts.top > 0 ? `${parts.top}/${parts.bottom}` : '',
  ];
  return `${parts.minus ? MINUS : ''}${figures.filter(Boolean).join(NO_BREAK)}${NO_BREAK}in`;
}
