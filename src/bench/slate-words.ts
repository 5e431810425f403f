/** Picks the values of a rule out of free words: choices by what people call them, sizes, threads. Pure. */

import { type Language, optionPhrases, optionText } from '../texts/index.ts';
import {
  type ChoiceInput,
  type Rule,
  type RuleInput,
  type RuleValue,
  toBase,
} from '../trade/index.ts';
import { normalise, readNumber, showFraction } from '../words/index.ts';
import type { Phrasing } from './slate-phrasing.ts';

/** Where a name was cut out: words on its two sides are never read as one number. */
const cutOut = ' | ';

/** What was found, and the words that are left over. */
export interface Picked {
  readonly values: Readonly<Record<string, RuleValue>>;
  readonly rest: string;
}

/** Plain words parted by single blanks; hyphens part words too, but a point stays in its number. */
export function plainWords(text: string, language: Language): string {
  return normalise(text.replace(/(?<=\p{L})-(?=\p{L})/gu, ' '), language);
}

/** The choices of a rule named in the words, longest names first: "high speed steel" before "steel". */
export function pickChoices(
  rule: Rule,
  words: string,
  names: readonly string[],
  { language }: Phrasing,
): Picked {
  const inputs = rule.inputs.filter(
    (input): input is ChoiceInput => input.kind === 'choice' && names.includes(input.name),
  );
  const phrases = inputs
    .flatMap((input) => input.options.flatMap((option) => phrasesOf(input, option, language)))
    .sort((a, b) => b.phrase.length - a.phrase.length);
  const values: Record<string, RuleValue> = {};
  let rest = ` ${words} `;
  for (const { name, option, phrase } of phrases) {
    if (name in values || !rest.includes(` ${phrase} `)) continue;
    values[name] = option;
    rest = rest.replace(` ${phrase} `, cutOut);
  }
  return { values, rest: rest.trim() };
}

/** A language that has its own names for the choices is not asked in English. */
function phrasesOf(input: ChoiceInput, option: string, language: Language) {
  const names = language.spoken
    ? [optionText(language, option), ...optionPhrases(language, option)]
    : [option, ...(input.said?.[option] ?? [])];
  return names.map((name) => ({
    ...{ name: input.name, option },
    phrase: plainWords(name, language),
  }));
}

/**
 * The one number left in some words, in the unit that was said or else in `unit`; any word beside it refuses.
 * Inches come out in mm.
 */
export function pickNumber(words: string, unit: string, phrasing: Phrasing): number | undefined {
  const parts = words
    .split('|')
    .map((part) => withoutFillers(part, phrasing.all('fillers')))
    .filter((part) => part !== '');
  const [only, ...more] = parts;
  if (only === undefined || more.length > 0) return undefined;
  const wanted = { unit, min: 0, max: 100_000 };
  const value = readNumber(only, wanted, phrasing.language)[0]?.value;
  return value === undefined || unit !== 'in' ? value : toBase(value, unit, 'length');
}

/** Only at the ends: "one and a half" is one number. */
function withoutFillers(words: string, fillers: readonly string[]): string {
  const row = words.split(' ').filter((word) => word !== '');
  while (fillers.includes(row[0] ?? '.')) row.shift();
  while (fillers.includes(row.at(-1) ?? '.')) row.pop();
  return row.join(' ');
}

/** "m ten by one point two five" as "M10x1.25"; "quarter twenty" as "1/4-20"; nothing when it is no thread. */
export function pickThread(words: string, phrasing: Phrasing): string | undefined {
  const spelt = phrasing.spelt(words).trim();
  const metric = /^m ?(.+)$/.exec(spelt.replace(/(?<=\d) ?x ?(?=\d)/, ' x '));
  if (metric) {
    const [, whole = ''] = metric;
    const [size, pitch] = phrasing.split('by', whole) ?? [whole];
    const major = numberIn(size, phrasing.language);
    const step = pitch === undefined ? undefined : numberIn(pitch, phrasing.language);
    if (major === undefined || (pitch !== undefined && step === undefined)) return undefined;
    return step === undefined ? `M${major}` : `M${major}x${step}`;
  }
  return inchThread(spelt);
}

function numberIn(words: string, language: Language): number | undefined {
  return readNumber(words, { unit: 'mm', min: 0, max: 1000 }, language)[0]?.value;
}

/** A fraction of an inch first, then the threads an inch, then the series where it was said. */
function inchThread(words: string): string | undefined {
  const [, size = words, series = ''] = /^(.+?)((?: ?un[cfs]?)?)$/.exec(words) ?? [];
  const typed = /^(?:\d+ )?\d+\/\d+ ?- ?\d+$/.exec(size.trim());
  if (typed) return `${size.trim().replace(/ ?- ?/, '-')}${series.toUpperCase()}`;
  const row = size.trim().split(/[ -]/);
  for (let at = row.length - 1; at > 0; at -= 1) {
    const inch = readNumber(row.slice(0, at).join(' '), { unit: 'in', min: 0, max: 6 })[0]?.value;
    const turns = readNumber(row.slice(at).join(' '), { unit: '', min: 3, max: 80 })[0]?.value;
    if (inch === undefined || turns === undefined) continue;
    const sixtyFourths = inch * 64;
    if (!Number.isInteger(sixtyFourths) || !Number.isInteger(turns) || turns < 3) continue;
    return `${inchFigures(inch)}-${turns}${series.toUpperCase()}`;
  }
  return undefined;
}

/** "1 3/8", as thread names are written. */
function inchFigures(inch: number): string {
  return (showFraction(inch) ?? '').replace(/\u00a0in$/, '').replace('\u00a0', ' ');
}

/** "h seven" as a letter and a grade; upper case is kept where it was written. */
export function pickClass(
  text: string,
  { language }: Phrasing,
): { readonly letter: string; readonly grade: number } | null {
  const [, letter = '', grade = ''] =
    /(?:^|\s|\d)([a-z]{1,2}) ?(\p{L}+|\d{1,2})\s*$/iu.exec(text) ?? [];
  const value = numberIn(grade.toLowerCase(), language);
  return letter === '' || value === undefined ? null : { letter, grade: value };
}

/** Names of the inputs a rule has. */
export function hasInput(rule: Rule, name: string): RuleInput | undefined {
  return rule.inputs.find((input) => input.name === name);
}
