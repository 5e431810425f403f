/** Whole numbers in words by the table of a language, and back. */

import type { Spoken } from '../texts/index.ts';

/** Beyond this the words serve nobody at a machine. */
const LARGEST = 999_999_999;

/** 24 → "vierundzwanzig". Takes whole numbers from 0; larger ones are given digit by digit. */
export function integerIn(spoken: Spoken, n: number): string {
  if (n > LARGEST) return digitsIn(spoken, String(n));
  const millions = Math.floor(n / 1_000_000);
  const rest = n % 1_000_000;
  const [one = '', many = ''] = spoken.million;
  const head = millions === 1 ? one : `${belowMillion(spoken, millions)} ${many}`;
  if (millions === 0) return belowMillion(spoken, rest);
  return rest === 0 ? head : `${head} ${belowMillion(spoken, rest)}`;
}

/** "24,95" or "24.95" → "zwei vier Komma neun fünf". */
export function digitsIn(spoken: Spoken, digits: string): string {
  return [...digits]
    .flatMap((sign) => {
      if (sign === '.') return [spoken.point];
      return /\d/.test(sign) ? [spoken.belowTwenty[Number(sign)] ?? ''] : [];
    })
    .join(' ');
}

function belowMillion(spoken: Spoken, n: number): string {
  const thousands = Math.floor(n / 1000);
  const rest = n % 1000;
  if (thousands === 0) return belowThousand(spoken, rest, false);
  const head = belowThousand(spoken, thousands, true) + spoken.joint + spoken.thousand;
  return rest === 0 ? head : head + spoken.joint + belowThousand(spoken, rest, false);
}

/** `inside`: another piece of the same number follows. */
function belowThousand(spoken: Spoken, n: number, inside: boolean): string {
  const hundreds = Math.floor(n / 100);
  const rest = n % 100;
  if (hundreds === 0) return belowHundred(spoken, rest, inside);
  const head = belowHundred(spoken, hundreds, true) + spoken.joint + spoken.hundred;
  return rest === 0 ? head : head + spoken.joint + belowHundred(spoken, rest, inside);
}

function belowHundred(spoken: Spoken, n: number, inside: boolean): string {
  const { belowTwenty, tens, oneInside, between } = spoken;
  if (n < 20) return n === 1 && inside ? oneInside : (belowTwenty[n] ?? '');
  const ten = tens[Math.floor(n / 10)] ?? '';
  const one = n % 10;
  if (one === 0) return ten;
  const first = one === 1 ? oneInside : (belowTwenty[one] ?? '');
  return between.replace('{one}', first).replace('{ten}', ten);
}

const read = new WeakMap<Spoken, ReadonlyMap<string, number>>();

/** Everything below a thousand, and the forms heard beside it. */
function smallNumbers(spoken: Spoken): ReadonlyMap<string, number> {
  const known = read.get(spoken);
  if (known) return known;
  const words = new Map<string, number>();
  const bare = spoken.hundred;
  for (let n = 0; n < 1000; n++) {
    const said = belowThousand(spoken, n, false).toLowerCase();
    words.set(said, n);
    words.set(belowThousand(spoken, n, true).toLowerCase(), n);
    // One hundred is said without its one too.
    if (n >= 100 && n < 200) words.set(said.slice(said.indexOf(bare)), n);
  }
  // "vierzehnhundert": hundreds beyond nine.
  for (let n = 11; n < 20; n++)
    words.set(`${spoken.belowTwenty[n] ?? ''}${bare}`.toLowerCase(), n * 100);
  for (const [word, n] of Object.entries(spoken.alsoHeard)) words.set(word, n);
  read.set(spoken, words);
  return words;
}

/** The whole number that one word says ("eintausendvierhundert"), or null. `word` is in small letters. */
export function integerOf(spoken: Spoken, word: string): number | null {
  const small = smallNumbers(spoken);
  const whole = small.get(word);
  if (whole !== undefined) return whole;
  const at = word.indexOf(spoken.thousand);
  if (at < 0) return null;
  const [head, tail] = [word.slice(0, at), word.slice(at + spoken.thousand.length)];
  const thousands = head === '' ? 1 : small.get(head);
  const rest = tail === '' ? 0 : small.get(tail);
  if (thousands === undefined || rest === undefined || thousands > 999) return null;
  return thousands === 0 || rest > 999 ? null : thousands * 1000 + rest;
}
