/** The ways a number in one place may be said, as a small graph of words. Pure. */
import type { NumberWanted } from '../../bench/ports.ts';

export interface NumberArc {
  readonly from: number;
  readonly to: number;
  /** Empty: passes without a word. */
  readonly word: string;
  /** Probability beside the usual ways; 1 when not given. */
  readonly weight?: number;
}

export interface NumberPaths {
  /** State 0 is the start. */
  readonly arcs: readonly NumberArc[];
  readonly ends: readonly number[];
  /** Every word that occurs, each once. */
  readonly words: readonly string[];
}

const ONES = 'zero one two three four five six seven eight nine'.split(' ');
const TEENS =
  'ten eleven twelve thirteen fourteen fifteen sixteen seventeen eighteen nineteen'.split(' ');
const TENS = ' ten twenty thirty forty fifty sixty seventy eighty ninety'.split(' ');
const DIGITS = [...ONES, 'oh'];

/** "One eight" for eighteen is said now and then, and is easily found in "forty point": probability beside the usual way. */
const RARE = 0.002;

/**
 * Each further decimal is one of ten, to the fourth: the engine counts its sounds so much too high. Without it the "t" of
 * "point one" was heard as a digit, "point two one". Of 52 numbers of four voices 47 are right, 44 were.
 */
const NEXT_DECIMAL = 0.1 ** 4;

/** Whole parts are listed one by one when there are no more than this, else built from rules. */
const LISTED = 120;

/**
 * Well-formed numbers only. The whole part may lie a little outside the range and the decimals are
 * free, on purpose: a reading that is out of range must be heard as what it is, so that the bench
 * can question it, never be bent to the nearest one that fits.
 */
export function numberPaths(wanted: NumberWanted): NumberPaths {
  const graph = new WordGraph();
  const signed = wanted.min < 0 ? graph.optional(0, ['minus', 'plus']) : 0;
  const whole = addWhole(graph, signed, wanted);
  const done = graph.state();
  graph.pass(whole, done);
  if (wanted.decimals > 0) addDecimals(graph, signed, whole, done, wanted);
  if (isInch(wanted.unit)) addThou(graph, signed, done, wanted);
  const end = addUnit(graph, done, wanted.unit);
  return graph.finish([done, end]);
}

/** More values than this are too many to list. */
const MOST_VALUES = 700;

/**
 * Only the values inside the range, each in the ways it may be said; null when there are too many.
 * A reading is far likelier to lie inside than outside, so the ear weighs this against `numberPaths`.
 */
export function numberPathsInside({ unit, min, max, decimals }: NumberWanted): NumberPaths | null {
  const scale = 10 ** decimals;
  const first = Math.ceil(min * scale - 1e-6);
  const last = Math.floor(max * scale + 1e-6);
  if (min < 0 || last < first || last - first >= MOST_VALUES || max >= 100_000) return null;
  const graph = new WordGraph();
  const done = graph.state();
  for (let n = first; n <= last; n++) {
    const fraction = decimals > 0 ? String(n % scale).padStart(decimals, '0') : '';
    for (const whole of wholeWays(Math.floor(n / scale))) {
      const weight = weightOf(Math.floor(n / scale), whole);
      for (const digits of fractionWays(fraction)) {
        const further = Math.max(0, digits.length - 2);
        graph.path(0, done, [...whole, ...digits], weight * NEXT_DECIMAL ** further);
      }
    }
  }
  return graph.finish([done, addUnit(graph, done, unit)]);
}

function weightOf(whole: number, words: readonly string[]): number {
  return whole >= 10 && words.every((word) => ONES.includes(word)) ? RARE : 1;
}

/** "point five" alone is nought point five. */
function wholeWays(whole: number): readonly (readonly string[])[] {
  return whole === 0 ? [['zero'], []] : cardinals(whole);
}

/** Zeros at the end may be left out; other zeros may be "oh". */
function fractionWays(digits: string): readonly (readonly string[])[] {
  const shortest = digits.replace(/0+$/, '').length;
  const ways: string[][] = shortest === 0 ? [[]] : [];
  for (let length = Math.max(1, shortest); length <= digits.length; length++) {
    const words = [...digits.slice(0, length)].map((digit) => ONES[Number(digit)] ?? '');
    ways.push(['point', ...words]);
    if (words.includes('zero')) {
      ways.push(['point', ...words.map((word) => (word === 'zero' ? 'oh' : word))]);
    }
  }
  return ways;
}

function isInch(unit: string): boolean {
  return unit === 'in' || unit === 'inch';
}

class WordGraph {
  private states = 1;
  private readonly arcs: NumberArc[] = [];
  private readonly branches = new Map<string, number>();

  state(): number {
    return this.states++;
  }
  say(from: number, to: number, word: string, weight = 1): void {
    this.arcs.push({ from, to, word, ...(weight < 1 ? { weight } : {}) });
  }
  pass(from: number, to: number): void {
    this.arcs.push({ from, to, word: '' });
  }
  optional(from: number, words: readonly string[]): number {
    const to = this.state();
    this.pass(from, to);
    for (const word of words) this.say(from, to, word);
    return to;
  }
  /** Words one after another; common beginnings are shared. */
  path(from: number, to: number, words: readonly string[], weight = 1): void {
    if (words.length === 0) return;
    const last = words.length - 1;
    let at = from;
    for (const word of words.slice(0, last)) at = this.branch(at, word);
    this.say(at, to, words[last] ?? '', weight);
  }
  private branch(from: number, word: string): number {
    const key = `${from} ${word}`;
    const known = this.branches.get(key);
    if (known !== undefined) return known;
    const to = this.state();
    this.branches.set(key, to);
    this.say(from, to, word);
    return to;
  }
  finish(ends: readonly number[]): NumberPaths {
    const words = [...new Set(this.arcs.map((arc) => arc.word).filter((word) => word !== ''))];
    return { arcs: unique(this.arcs), ends: [...new Set(ends)], words };
  }
}

function unique(arcs: readonly NumberArc[]): readonly NumberArc[] {
  return [...new Map(arcs.map((arc) => [`${arc.from} ${arc.to} ${arc.word}`, arc])).values()];
}

function addWhole(graph: WordGraph, from: number, { min, max }: NumberWanted): number {
  const to = graph.state();
  const size = Math.max(Math.abs(min), Math.abs(max));
  const low = min <= 0 ? 0 : Math.max(0, Math.floor(min) - 1);
  const high = Math.ceil(size) + (size >= 1 ? 1 : 0);
  if (high - low <= LISTED) {
    for (let n = low; n <= high; n++) {
      for (const words of cardinals(n)) graph.path(from, to, words, weightOf(n, words));
    }
  } else addCardinals(graph, from, to, String(high).length);
  return to;
}

/** Ways to say a whole number below 100,000: as a cardinal, and digit by digit. */
export function cardinals(n: number): readonly (readonly string[])[] {
  const ways = [cardinal(n)];
  const digits = [...String(n)].map((d) => ONES[Number(d)] ?? '');
  if (n >= 10) ways.push(digits);
  if (n >= 1100 && n < 10_000 && n % 100 === 0 && n % 1000 !== 0) {
    ways.push([...cardinal(n / 100), 'hundred']);
  }
  return ways;
}

function cardinal(n: number): readonly string[] {
  if (n < 10) return [ONES[n] ?? ''];
  if (n < 20) return [TEENS[n - 10] ?? ''];
  if (n < 100) return [TENS[Math.floor(n / 10)] ?? '', ...rest(n % 10)];
  if (n < 1000) return [...cardinal(Math.floor(n / 100)), 'hundred', ...rest(n % 100)];
  return [...cardinal(Math.floor(n / 1000)), 'thousand', ...rest(n % 1000)];
}

function rest(n: number): readonly string[] {
  return n === 0 ? [] : cardinal(n);
}

/** Cardinals by rule, for wide ranges such as spindle speeds: up to the given count of digits. */
function addCardinals(graph: WordGraph, from: number, to: number, digits: number): void {
  if (digits >= 4) {
    const thousand = graph.state();
    const after = graph.state();
    addBelowHundred(graph, from, thousand);
    graph.say(thousand, after, 'thousand');
    graph.pass(after, to);
    addBelowThousand(graph, after, to, false);
  }
  addBelowThousand(graph, from, to, digits >= 4);
}

function addBelowThousand(graph: WordGraph, from: number, to: number, teensToo: boolean): void {
  const hundred = graph.state();
  const after = graph.state();
  for (const word of ONES.slice(1)) graph.say(from, hundred, word);
  if (teensToo) for (const word of TEENS.slice(1)) graph.say(from, hundred, word);
  graph.say(hundred, after, 'hundred');
  graph.pass(after, to);
  const joined = graph.optional(after, ['and']);
  addBelowHundred(graph, joined, to);
  addBelowHundred(graph, from, to);
}

function addBelowHundred(graph: WordGraph, from: number, to: number): void {
  const ten = graph.state();
  for (const word of TENS.slice(2)) graph.say(from, ten, word);
  graph.pass(ten, to);
  for (const word of ONES.slice(1)) graph.say(ten, to, word);
  for (const word of [...ONES, ...TEENS]) graph.say(from, to, word);
}

/** "point" and one digit after another, as many as the place has decimals; "oh" counts as zero. */
function addDecimals(
  graph: WordGraph,
  from: number,
  whole: number,
  done: number,
  { min, max, decimals }: NumberWanted,
): void {
  const point = graph.state();
  graph.say(whole, point, 'point');
  if (Math.min(Math.abs(min), Math.abs(max)) < 1 || min < 0) graph.say(from, point, 'point');
  let at = point;
  for (let i = 0; i < decimals; i++) {
    const next = graph.state();
    for (const digit of DIGITS) graph.say(at, next, digit, i === 0 ? 1 : NEXT_DECIMAL);
    graph.pass(next, done);
    at = next;
  }
}

/** "twenty five thou": thousandths of an inch, up to 999. */
function addThou(graph: WordGraph, from: number, done: number, { min, max }: NumberWanted): void {
  if (Math.min(Math.abs(min), Math.abs(max)) >= 1 && min > 0) return;
  const count = graph.state();
  const largest = Math.min(999, Math.ceil(1000 * Math.max(Math.abs(min), Math.abs(max))));
  addCardinals(graph, from, count, String(largest).length);
  for (const word of ['thou', 'thousandths']) graph.say(count, done, word);
}

/** Unit of a reading → the words that may be said behind it. */
export const UNIT_WORDS: Readonly<Record<string, readonly string[]>> = {
  mm: ['millimetres'],
  in: ['inches', 'inch'],
  inch: ['inches', 'inch'],
  deg: ['degrees'],
  '°': ['degrees'],
};

function addUnit(graph: WordGraph, done: number, unit: string): number {
  const end = graph.state();
  for (const word of UNIT_WORDS[unit] ?? []) graph.say(done, end, word);
  return end;
}
