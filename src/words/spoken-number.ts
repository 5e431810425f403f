/** A number said or typed in a language that has a table, read into exact values in the unit that is wanted. */

import type { Language, Spoken } from '../texts/index.ts';
import {
  decimalsOf,
  type Exact,
  exact,
  fromDecimalText,
  fromNumber,
  over,
  plus,
  toNumber,
} from './exact.ts';
import type { SpokenNumber } from './number-in.ts';
import { sayNumber } from './number-out.ts';
import { fineEnough, inRange, type WantedNumber } from './number-readings.ts';
import { inUnit } from './number-units.ts';
import { integerOf } from './spoken-integers.ts';
import { plainIn } from './spoken-plain.ts';
import { type Unit, unitOf } from './units-spoken.ts';

/** Nobody needs more words for one figure; longer rows are talk. */
const MOST_WORDS = 16;
/** Words of one whole number that an ear may have parted: "vier und zwanzig tausend". */
const MOST_PARTED = 6;
const LONGEST_DECIMAL = 9;

interface Amount {
  readonly value: Exact;
  readonly end: number;
  /** The unit that was said, if one was. */
  readonly unit: Unit | null;
}

/** Every sensible reading, those inside the wanted range first; empty when it is no number. */
export function readSpoken(
  text: string,
  wanted: WantedNumber | undefined,
  language: Language,
  spoken: Spoken,
): SpokenNumber[] {
  const values = rowsOf(text, spoken).flatMap((words) => wholeNumber(words, spoken));
  const unit = wanted === undefined ? null : unitOf(wanted.unit);
  const found = values.flatMap(({ value, unit: said }) => {
    const known = wanted === undefined || said === null || unit !== null;
    const size = !known || said === null || unit === null ? value : inUnit(value, said, unit);
    return known && size !== null ? [{ size, said }] : [];
  });
  const seen = new Set<string>();
  const all = found
    .filter(
      ({ size }) =>
        !seen.has(`${size.top}/${size.bottom}`) && seen.add(`${size.top}/${size.bottom}`),
    )
    .flatMap(({ size, said }) => numberOf(size, said, wanted, language));
  return onlyOneMeaning(all, wanted).sort((a, b) => Number(b.fits) - Number(a.fits));
}

/** A figure with two readings a thousandfold apart counts only where the range leaves one. */
function onlyOneMeaning(
  all: readonly SpokenNumber[],
  wanted: WantedNumber | undefined,
): SpokenNumber[] {
  if (all.length < 2) return [...all];
  const ranged = wanted?.min !== undefined && wanted.max !== undefined;
  const inside = ranged ? all.filter(({ fits }) => fits) : [];
  return inside.length === 1 ? inside : [];
}

/** The words of a text; a point in a figure may be decimal or part thousands, which gives two rows. */
function rowsOf(text: string, spoken: Spoken): readonly (readonly string[])[] {
  const spaced = text
    .replace(/(^|\s)[-–—−](?=\s*\S)/g, ` ${spoken.minus} `)
    .replace(/(\d)\s*(?=[\p{L}°%µ])/gu, '$1 ')
    .replace(/\bu\/min\b/gi, 'u/min');
  const plain = spoken.runUp.reduce(
    (rest, head) => (rest.startsWith(`${head} `) ? rest.slice(head.length + 1) : rest),
    plainIn(spoken, spaced),
  );
  const words = plain.split(' ').filter((word) => word !== '' && !spoken.edges.includes(word));
  const kept = plain.split(' ').filter((word) => word !== '');
  const row = kept.length === words.length ? words : trimmed(kept, spoken);
  if (row.length === 0 || row.length > MOST_WORDS) return [];
  return figureRows(row, spoken);
}

/** Without politeness at the ends; "und" inside a number stays. */
function trimmed(words: readonly string[], { edges }: Spoken): readonly string[] {
  const from = words.findIndex((word) => !edges.includes(word));
  const to = words.findLastIndex((word) => !edges.includes(word));
  return from < 0 ? [] : words.slice(from, to + 1);
}

function figureRows(row: readonly string[], spoken: Spoken): readonly (readonly string[])[] {
  const { decimalSign, groupSign } = spoken;
  const made = (decimal: string, group: string) =>
    row.map((word) => (/^\d[\d.,]*$/.test(word) ? plainFigure(word, decimal, group) : word));
  const rows = [made(decimalSign, groupSign), made(groupSign, decimalSign)].filter((one) =>
    one.every((word) => word !== ''),
  );
  return [...new Map(rows.map((one) => [one.join(' '), one])).values()];
}

/** "24,95" as "24.95"; nothing where the signs cannot mean that. */
function plainFigure(figure: string, decimal: string, group: string): string {
  const [whole = '', part, ...more] = figure.split(decimal);
  if (more.length > 0 || (part !== undefined && !/^\d+$/.test(part))) return '';
  const pieces = whole.split(group);
  const grouped = pieces.length > 1;
  const fits =
    pieces.slice(1).every((piece) => piece.length === 3) && (pieces[0] ?? '').length <= 3;
  if (grouped && !fits) return '';
  return pieces.join('') + (part === undefined ? '' : `.${part}`);
}

interface Whole {
  readonly value: Exact;
  readonly unit: Unit | null;
}

/** All words as one number: amount, then perhaps a smaller piece after it. */
function wholeNumber(words: readonly string[], spoken: Spoken): readonly Whole[] {
  const minus = spoken.minuses.includes(words[0] ?? '');
  const start = minus || spoken.pluses.includes(words[0] ?? '') ? 1 : 0;
  const signed = (value: Exact) => (minus ? exact(-value.top, value.bottom) : value);
  return amountsAt(words, start, spoken).flatMap((first) => {
    if (first.end === words.length) return [{ value: signed(first.value), unit: first.unit }];
    const next = words[first.end] === spoken.and.toLowerCase() ? first.end + 1 : first.end;
    return partsAt(words, next, spoken)
      .filter((second) => second.end === words.length && toNumber(second.value) < 1)
      .filter((second) => first.unit !== null || second.end > next)
      .map((second) => ({
        value: signed(plus(first.value, second.value)),
        unit: first.unit ?? second.unit,
      }));
  });
}

function amountsAt(words: readonly string[], at: number, spoken: Spoken): readonly Amount[] {
  const plain = [
    ...decimalsAt(words, at, spoken),
    ...integersAt(words, at, spoken),
    ...halvesAt(words, at, spoken),
  ];
  return [...withUnits(words, plain, spoken), ...partsAt(words, at, spoken)];
}

interface Span {
  readonly value: Exact;
  readonly end: number;
}

/** One whole number, in figures or in words that may have been parted. */
function integersAt(words: readonly string[], at: number, spoken: Spoken): readonly Span[] {
  const here = words[at] ?? '';
  if (/^\d{1,9}$/.test(here)) return [{ value: exact(Number(here)), end: at + 1 }];
  const found: Span[] = [];
  for (let length = 1; length <= MOST_PARTED && at + length <= words.length; length++) {
    const n = integerOf(spoken, words.slice(at, at + length).join(''));
    if (n !== null) found.push({ value: exact(n), end: at + length });
  }
  return [...found, ...digitRow(words, at, spoken)];
}

/** "vier fünf null": single digits in a row, the first not zero. */
function digitRow(words: readonly string[], at: number, spoken: Spoken): readonly Span[] {
  let digits = '';
  let end = at;
  for (; end < words.length; end++) {
    const n = integerOf(spoken, words[end] ?? '');
    if (n === null || n > 9) break;
    digits += String(n);
  }
  return digits.length > 1 && digits[0] !== '0' ? [{ value: exact(Number(digits)), end }] : [];
}

function decimalsAt(words: readonly string[], at: number, spoken: Spoken): readonly Span[] {
  const here = words[at] ?? '';
  const figure = /^\d+\.\d+$/.test(here) ? fromDecimalText(here) : null;
  if (figure) return [{ value: figure, end: at + 1 }];
  return integersAt(words, at, spoken)
    .filter(({ end }) => spoken.points.includes(words[end] ?? ''))
    .flatMap(({ value, end }) => {
      const part = digitsAfter(words, end + 1, spoken);
      const size = part && fromDecimalText(`${value.top}.${part.digits}`);
      return part && size ? [{ value: size, end: part.end }] : [];
    });
}

/** Digits behind the point: singly ("neun fünf"), in pairs ("fünfundneunzig"), or as figures. */
function digitsAfter(words: readonly string[], at: number, spoken: Spoken) {
  let digits = '';
  let end = at;
  for (; end < words.length; end++) {
    const here = words[end] ?? '';
    const n = /^\d+$/.test(here) ? here : integerOf(spoken, here);
    if (n === null || String(n).length > 3) break;
    digits += String(n);
  }
  return digits === '' || digits.length > LONGEST_DECIMAL ? undefined : { digits, end };
}

/** "anderthalb", "zweieinhalb", "ein halber". */
function halvesAt(words: readonly string[], at: number, spoken: Spoken): readonly Span[] {
  const from = integerOf(spoken, words[at] ?? '') === 1 ? at + 1 : at;
  const whole = spoken.halves[words[from] ?? ''];
  const value = whole === undefined ? null : fromNumber(whole);
  if (value) return [{ value, end: from + 1 }];
  const here = words[at] ?? '';
  if (!here.endsWith(spoken.andAHalf)) return [];
  const n = integerOf(spoken, here.slice(0, -spoken.andAHalf.length));
  return n === null ? [] : [{ value: plus(exact(n), exact(1, 2)), end: at + 1 }];
}

/** "zwei Hundertstel", "fünf Hundertstel Millimeter". */
function partsAt(words: readonly string[], at: number, spoken: Spoken): readonly Amount[] {
  const counts = [...integersAt(words, at, spoken), ...halvesAt(words, at, spoken)];
  const spans = counts.flatMap(({ value, end }) => {
    const part = spoken.parts[words[end] ?? ''];
    return part === undefined ? [] : [{ value: over(value, exact(part)), end: end + 1 }];
  });
  return withUnits(words, spans, spoken);
}

/** Each span alone, and with the unit said after it. */
function withUnits(
  words: readonly string[],
  spans: readonly Span[],
  spoken: Spoken,
): readonly Amount[] {
  return spans.flatMap(({ value, end }) => [
    { value, end, unit: null },
    ...unitsAt(words, end, spoken).map((named) => ({ value, ...named })),
  ]);
}

function unitsAt(words: readonly string[], at: number, spoken: Spoken) {
  const found: { readonly unit: Unit; readonly end: number }[] = [];
  for (const [id, [, ...names]] of Object.entries(spoken.units)) {
    const unit = unitOf(id);
    for (const name of new Set(names.map((one) => one.toLowerCase()))) {
      const length = name.split(' ').length;
      if (unit && name !== '' && words.slice(at, at + length).join(' ') === name) {
        found.push({ unit, end: at + length });
      }
    }
  }
  return found;
}

function numberOf(
  size: Exact,
  said: Unit | null,
  wanted: WantedNumber | undefined,
  language: Language,
): SpokenNumber[] {
  const exactly = { numerator: Number(size.top), denominator: Number(size.bottom) };
  if (!Number.isSafeInteger(exactly.numerator) || !Number.isSafeInteger(exactly.denominator)) {
    return [];
  }
  const unit = wanted?.unit ?? said?.id ?? '';
  const decimals = Math.min(decimalsOf(size) ?? LONGEST_DECIMAL, LONGEST_DECIMAL);
  return [
    {
      value: toNumber(size),
      unit,
      said: said?.id ?? '',
      exact: exactly,
      text: sayNumber(toNumber(size), unit, decimals, { language }),
      fits: inRange(size, wanted) && fineEnough(size, wanted),
      cost: 0,
    },
  ];
}
