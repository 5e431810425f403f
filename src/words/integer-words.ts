/** Whole numbers as English words, the British way: "one hundred and five". */

const BELOW_TWENTY = [
  'zero',
  'one',
  'two',
  'three',
  'four',
  'five',
  'six',
  'seven',
  'eight',
  'nine',
  'ten',
  'eleven',
  'twelve',
  'thirteen',
  'fourteen',
  'fifteen',
  'sixteen',
  'seventeen',
  'eighteen',
  'nineteen',
] as const;

const TENS = [
  '',
  '',
  'twenty',
  'thirty',
  'forty',
  'fifty',
  'sixty',
  'seventy',
  'eighty',
  'ninety',
] as const;

const ODD_ORDINALS: Readonly<Record<string, string>> = {
  one: 'first',
  two: 'second',
  three: 'third',
  five: 'fifth',
  eight: 'eighth',
  nine: 'ninth',
  twelve: 'twelfth',
};

/** Digits spoken the way aircraft radio speaks them, for noisy rooms (ICAO Annex 10, vol. II). */
const RADIO: Readonly<Record<string, string>> = {
  '3': 'tree',
  '4': 'fower',
  '5': 'fife',
  '9': 'niner',
};

/** Beyond this the words serve nobody at a machine; larger numbers are read digit by digit. */
export const LARGEST_IN_WORDS = 999_999_999;

function belowHundred(n: number): string {
  if (n < 20) return BELOW_TWENTY[n] ?? '';
  const tens = TENS[Math.floor(n / 10)] ?? '';
  return n % 10 === 0 ? tens : `${tens}-${BELOW_TWENTY[n % 10] ?? ''}`;
}

function belowThousand(n: number): string {
  const hundreds = Math.floor(n / 100);
  const rest = n % 100;
  if (hundreds === 0) return belowHundred(rest);
  const head = `${BELOW_TWENTY[hundreds] ?? ''} hundred`;
  return rest === 0 ? head : `${head} and ${belowHundred(rest)}`;
}

/** 450 → "four hundred and fifty". Takes whole numbers from 0; above 999 999 999 gives the digits one by one. */
export function wordsOfInteger(n: number): string {
  if (n > LARGEST_IN_WORDS) return digitsInWords(String(n));
  const parts: string[] = [];
  const millions = Math.floor(n / 1_000_000);
  const thousands = Math.floor(n / 1000) % 1000;
  const rest = n % 1000;
  if (millions > 0) parts.push(`${belowThousand(millions)} million`);
  if (thousands > 0) parts.push(`${belowThousand(thousands)} thousand`);
  if (rest > 0 && rest < 100 && parts.length > 0) parts.push('and');
  if (rest > 0 || parts.length === 0) parts.push(belowThousand(rest));
  return parts.join(' ');
}

/** 32 → "thirty-second", 8 → "eighth": ordinals, and the names of the parts of an inch. */
export function ordinalOfInteger(n: number): string {
  const words = wordsOfInteger(n);
  const last = /[a-z]+$/.exec(words)?.[0] ?? '';
  const odd = ODD_ORDINALS[last] ?? (last.endsWith('y') ? `${last.slice(0, -1)}ieth` : `${last}th`);
  return words.slice(0, words.length - last.length) + odd;
}

/** "24.95" → "two four point nine five". `radio` says tree, fower, fife, niner. Other signs are left out. */
export function digitsInWords(digits: string, radio = false): string {
  const words: string[] = [];
  for (const sign of digits) {
    if (sign === '.') words.push('point');
    const plain = /\d/.test(sign) ? BELOW_TWENTY[Number(sign)] : undefined;
    if (plain !== undefined) words.push((radio ? RADIO[sign] : undefined) ?? plain);
  }
  return words.join(' ');
}
