/** Text as one ear, one key or one person writes it, made plain so that it can be compared. */

import type { Language } from '../texts/index.ts';
import { plainIn } from './spoken-plain.ts';

const SPELLINGS: Readonly<Record<string, string>> = {
  aluminum: 'aluminium',
  center: 'centre',
  centered: 'centred',
  centering: 'centring',
  centers: 'centres',
  color: 'colour',
  gage: 'gauge',
  gages: 'gauges',
  gray: 'grey',
  meter: 'metre',
  meters: 'metres',
  millimeter: 'millimetre',
  millimeters: 'millimetres',
  centimeter: 'centimetre',
  centimeters: 'centimetres',
  mold: 'mould',
  cannot: "can't",
  ok: 'okay',
};

/** Written as one word by some and as two by others; ours is the second. */
const JOINED: readonly (readonly [RegExp, string])[] = [
  [/\be ?stop\b/g, 'emergency stop'],
  [/\btail stock\b/g, 'tailstock'],
  [/\bhead stock\b/g, 'headstock'],
  [/\bhand ?wheel\b/g, 'handwheel'],
  [/\btoolpost\b/g, 'tool post'],
  [/\bcrossslide\b/g, 'cross slide'],
  [/\bhalfnut(s?)\b/g, 'half nut$1'],
  [/\bwill not\b/g, "won't"],
  [/\b(is|are|was|does|did|do|has|have) not\b/g, "$1n't"],
  [/\bcan not\b/g, "can't"],
];

/** Sounds of hesitation: never a word of their own, wherever they stand. */
const HESITATION = new Set([
  'um',
  'umm',
  'er',
  'erm',
  'uh',
  'uhm',
  'hm',
  'hmm',
  'mm-hm',
  'ah',
  'the',
]);

/** Run-ups and politeness: nothing at their end of an utterance, a word anywhere else ("turn right"). */
const LEADING = new Set(['please', 'okay', 'so', 'well', 'right', 'now', 'then', 'just', 'and']);
const TRAILING = new Set(['please', 'thanks', 'okay', 'now', 'then']);

const NEGATIONS = new Set([
  'no',
  'not',
  'never',
  'nor',
  'neither',
  'nothing',
  'none',
  'without',
  'hardly',
  'barely',
  'nearly',
  'almost',
  'nope',
  "ain't",
  'aint',
  'isnt',
  'arent',
  'wasnt',
  'wont',
  'cant',
  'dont',
  'doesnt',
  'didnt',
  'hasnt',
]);

/**
 * Lower case, no punctuation, hyphens as spaces, British spelling, hesitations left out. Numerals, signs and
 * points inside numbers stay: "Um, set Twenty-four, 24.95 mm!" → "set twenty four 24.95 mm".
 * Fillers at the ends stay: see `withoutEdges`.
 */
export function normalise(text: string, language?: Language): string {
  if (language?.spoken) return plainIn(language.spoken, text);
  let plain = text
    .toLowerCase()
    .replace(/[‘’ʼ`]/g, "'")
    .replace(/([a-z])[-‐‑–—](?=[a-z])/g, '$1 ')
    .replace(/[.,](?!\d)|[;!?…"“”()[\]]|:(?!\d)/g, ' ')
    .replace(/(^|\s)[-–—](?=\s|$)/g, ' ')
    .replace(/(^|[^a-z])'|'(?![a-z])/g, '$1 ')
    .replace(/\s+/g, ' ')
    .trim();
  for (const [joined, ours] of JOINED) plain = plain.replace(joined, ours);
  return plain
    .split(' ')
    .filter((word) => word !== '' && !HESITATION.has(word))
    .map((word) => SPELLINGS[word] ?? word)
    .join(' ');
}

function withoutLead(words: readonly string[]): readonly string[] {
  const from = words.findIndex((word) => !LEADING.has(word));
  return words.slice(from < 0 ? -1 : from);
}

function withoutTrail(words: readonly string[]): readonly string[] {
  const last = words.findLastIndex((word) => !TRAILING.has(word));
  return words.slice(0, Math.max(last, 0) + 1);
}

/** Plain words without run-up and politeness; of fillers alone one is left ("okay"). */
export function withoutEdges(words: readonly string[]): readonly string[] {
  return withoutTrail(withoutLead(words));
}

/** The words as they are, and without fillers at the front, the end, and both: what may be the utterance itself. */
export function withAndWithoutEdges(words: readonly string[]): readonly (readonly string[])[] {
  const forms = [words, withoutLead(words), withoutTrail(words), withoutEdges(words)];
  return [...new Map(forms.map((form) => [form.join(' '), form])).values()];
}

/** Does this plain word deny, or half deny, what stands beside it? */
export function denies(word: string): boolean {
  return NEGATIONS.has(word) || word.endsWith("n't");
}
