/** Reads a measure written by hand: "1.5in", "1 3/8 in", "400 rpm", "25". */

import {
  englishLanguage,
  type Language,
  typedIn,
  type Worded,
  worded,
  wordedIn,
} from '../texts/index.ts';
import type { Quantity } from './rule.ts';
import { findUnit, unitsOf } from './units.ts';

export type Measure =
  | { readonly ok: true; readonly value: number }
  | { readonly ok: false; readonly fault: string };

/** A number as a fraction of whole numbers, so that decimal and fractional inches stay exact. */
interface Fraction {
  readonly top: number;
  readonly bottom: number;
}

const WHOLE_AND_FRACTION = /^([+-]?)(?:(\d+)[ -]+)?(\d+)\/(\d+)(?![\d.])(.*)$/;
const DECIMAL = /^([+-]?)(\d+\.?\d*|\.\d+)(e[+-]?\d+)?(.*)$/i;
const EXACT_DIGITS = 15;

function decimalFraction(digits: string, exponent: string): Fraction {
  const [whole = '', part = ''] = digits.split('.');
  if (exponent !== '' || whole.length + part.length > EXACT_DIGITS) {
    return { top: Number(digits + exponent), bottom: 1 };
  }
  return { top: Number(whole + part), bottom: 10 ** part.length };
}

function split(text: string): { number: Fraction; sign: number; unit: string } | undefined {
  const fraction = WHOLE_AND_FRACTION.exec(text);
  if (fraction) {
    const [, sign, whole = '0', top = '', bottom = '', unit = ''] = fraction;
    const number = { top: Number(whole) * Number(bottom) + Number(top), bottom: Number(bottom) };
    return { number, sign: sign === '-' ? -1 : 1, unit: unit.trim() };
  }
  const decimal = DECIMAL.exec(text);
  if (!decimal) return undefined;
  const [, sign, digits = '', exponent = '', unit = ''] = decimal;
  const number = decimalFraction(digits, exponent);
  return { number, sign: sign === '-' ? -1 : 1, unit: unit.trim() };
}

function unitList(quantity: Quantity): Worded {
  const names = unitsOf(quantity).filter((name) => name !== '');
  return names.length === 0 ? 'no unit (a plain number)' : names.join(', ');
}

/**
 * Reads one measure into the base unit of its quantity; a bare number is in the base unit.
 * Fractions ("3/8in", "1 3/8 in") are exact. A fault says what came and which units are allowed.
 */
export function parseMeasure(
  text: string,
  quantity: Quantity,
  language: Language = englishLanguage,
): Measure {
  const refused = (fault: Worded) => ({ ok: false, fault: wordedIn(language, fault) }) as const;
  const parts = split(typedIn(language, text.trim()));
  const allowed = unitList(quantity);
  if (parts === undefined) {
    return refused(
      worded`"${text}" does not start with a number; write a number and a unit out of ${allowed}.`,
    );
  }
  const { number, sign, unit: name } = parts;
  if (number.bottom === 0) return refused(worded`"${text}" divides by nothing.`);
  const unit = name === '' ? undefined : findUnit(name, quantity);
  if (name !== '' && unit === undefined) {
    return refused(worded`"${text}" has the unit "${name}"; allowed here: ${allowed}.`);
  }
  const { times, over, offset } = unit ?? { times: 1, over: 1, offset: 0 };
  return { ok: true, value: (sign * number.top * times) / (number.bottom * over) + offset };
}

/**
 * Reads "70,200,450rpm" into numbers in the base unit; a unit on the last one counts for all bare ones. Where a
 * comma is the sign of decimals, ";" or a blank after the comma parts them.
 */
export function parseMeasures(
  text: string,
  quantity: Quantity,
  language: Language = englishLanguage,
): { readonly ok: true; readonly value: readonly number[] } | { ok: false; fault: string } {
  const between = language.spoken?.decimalSign === ',' ? /;|,(?!\d)/ : /[,;]/;
  const pieces = text.split(between).map((piece) => piece.trim());
  const lastUnit = split(pieces.at(-1) ?? '')?.unit ?? '';
  const values: number[] = [];
  for (const piece of pieces) {
    const bare = split(piece)?.unit === '';
    const measure = parseMeasure(bare ? `${piece}${lastUnit}` : piece, quantity, language);
    if (!measure.ok) return measure;
    values.push(measure.value);
  }
  return { ok: true, value: values };
}
