/** Picks the values of a rule out of free words: choices by what people call them, sizes, threads. Pure. */

import {
  type ChoiceInput,
  type Rule,
  type RuleInput,
  type RuleValue,
  toBase,
} from '../trade/index.ts';
import { normalise, readNumber, showFraction } from '../words/index.ts';

/** Where a name was cut out: words on its two sides are never read as one number. */
const cutOut = ' | ';

/** What was found, and the words that are left over. */
export interface Picked {
  readonly values: Readonly<Record<string, RuleValue>>;
  readonly rest: string;
}

const fillers =
  'for of in with a an the on at to is what diameter size tool drill cutter hole and by material'.split(
    ' ',
  );

/** Plain words parted by single blanks; hyphens part words too, but a point stays in its number. */
export function plainWords(text: string): string {
  return normalise(text.replace(/(?<=[a-z])-(?=[a-z])/gi, ' '));
}

/** The choices of a rule named in the words, longest names first: "high speed steel" before "steel". */
export function pickChoices(rule: Rule, words: string, names: readonly string[]): Picked {
  const inputs = rule.inputs.filter(
    (input): input is ChoiceInput => input.kind === 'choice' && names.includes(input.name),
  );
  const phrases = inputs
    .flatMap((input) => input.options.flatMap((option) => phrasesOf(input, option)))
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

function phrasesOf(input: ChoiceInput, option: string) {
  const names = [option, ...(input.said?.[option] ?? [])];
  return names.map((name) => ({ name: input.name, option, phrase: plainWords(name) }));
}

/**
 * The one number left in some words, in the unit that was said or else in `unit`; any word beside it refuses.
 * Inches come out in mm.
 */
export function pickNumber(words: string, unit: string): number | undefined {
  const parts = words
    .split('|')
    .map(withoutFillers)
    .filter((part) => part !== '');
  const [only, ...more] = parts;
  if (only === undefined || more.length > 0) return undefined;
  const value = readNumber(only, { unit, min: 0, max: 100_000 })[0]?.value;
  return value === undefined || unit !== 'in' ? value : toBase(value, unit, 'length');
}

/** Only at the ends: "one and a half" is one number. */
function withoutFillers(words: string): string {
  const row = words.split(' ').filter((word) => word !== '');
  while (fillers.includes(row[0] ?? '.')) row.shift();
  while (fillers.includes(row.at(-1) ?? '.')) row.pop();
  return row.join(' ');
}

const letters: Readonly<Record<string, string>> = { em: 'm', aitch: 'h', gee: 'g', kay: 'k' };

/** "m ten by one point two five" as "M10x1.25"; "quarter twenty" as "1/4-20"; nothing when it is no thread. */
export function pickThread(words: string): string | undefined {
  const spelt = words.replace(/\b(?:em|aitch|gee|kay)\b/g, (word) => letters[word] ?? word).trim();
  const metric = /^m ?(.+?)(?:(?: (?:x|by|times) |(?<=\d) ?x ?(?=\d))(.+))?$/.exec(spelt);
  if (metric) {
    const [, size = '', pitch] = metric;
    const major = numberIn(size);
    const step = pitch === undefined ? undefined : numberIn(pitch);
    if (major === undefined || (pitch !== undefined && step === undefined)) return undefined;
    return step === undefined ? `M${major}` : `M${major}x${step}`;
  }
  return inchThread(spelt);
}

function numberIn(words: string): number | undefined {
  return readNumber(words, { unit: 'mm', min: 0, max: 1000 })[0]?.value;
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
): { readonly letter: string; readonly grade: number } | null {
  const [, letter = '', grade = ''] =
    /(?:^|\s|\d)([a-z]{1,2}) ?([a-z]+|\d{1,2})\s*$/i.exec(text) ?? [];
  const value = numberIn(grade.toLowerCase());
  return letter === '' || value === undefined ? null : { letter, grade: value };
}

/** Names of the inputs a rule has. */
export function hasInput(rule: Rule, name: string): RuleInput | undefined {
  return rule.inputs.find((input) => input.name === name);
}
