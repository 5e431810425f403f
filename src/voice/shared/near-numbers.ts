/** The numbers that a number heard may have been: those a grammar knows that differ from it in one word. Pure. */
import type { Grammar } from './grammar.ts';
import { UNIT_WORDS } from './number-grammar.ts';

const UNITS: ReadonlySet<string> = new Set(Object.values(UNIT_WORDS).flat());

/**
 * Every way of words of the grammar that is `text`, or `text` with one word put in, left out or said otherwise; none of
 * the `phrases`, whatever they differ in: "seventeen" is never weighed against "next".
 */
export function nearNumbers(
  text: string,
  grammar: Grammar,
  phrases: ReadonlySet<string>,
): readonly string[] {
  const said = text.split(' ');
  const known = new Walk(grammar);
  const near = new Set<string>();
  const keep = (words: readonly string[]) => known.ends(words) && near.add(words.join(' '));
  keep(said);
  for (let i = 0; i <= said.length; i++) {
    const before = said.slice(0, i);
    keep([...before, ...said.slice(i + 1)]);
    for (const word of known.after(before)) {
      keep([...before, word, ...said.slice(i)]);
      keep([...before, word, ...said.slice(i + 1)]);
    }
  }
  return [...near].filter((words) => !phrases.has(words));
}

/** Whether both say the same value: "oh" is zero, zeros at the end of decimals say nothing, and a unit may be left out. */
export function isSameNumber(one: string, other: string): boolean {
  return bare(one) === bare(other);
}

function bare(text: string): string {
  const words = text.split(' ').filter((word) => !UNITS.has(word));
  const figures = words.map((word) => (word === 'oh' ? 'zero' : word));
  const point = figures.indexOf('point');
  if (point < 0) return figures.join(' ');
  const last = figures.findLastIndex((word) => word !== 'zero');
  return figures.slice(0, last === point ? point : last + 1).join(' ');
}

class Walk {
  private readonly arcsFrom = new Map<number, { readonly to: number; readonly word: string }[]>();

  constructor(private readonly grammar: Grammar) {
    for (const arc of grammar.arcs) {
      const known = this.arcsFrom.get(arc.from);
      if (known) known.push(arc);
      else this.arcsFrom.set(arc.from, [arc]);
    }
  }

  ends(words: readonly string[]): boolean {
    return this.reached(words).has(this.grammar.end);
  }

  /** The words that may follow these. */
  after(words: readonly string[]): ReadonlySet<string> {
    return new Set(
      [...this.reached(words)].flatMap((state) =>
        (this.arcsFrom.get(state) ?? []).map((arc) => arc.word),
      ),
    );
  }

  private reached(words: readonly string[]): ReadonlySet<number> {
    let states = new Set([this.grammar.start]);
    for (const word of words) {
      const next = [...states].flatMap((state) => this.arcsFrom.get(state) ?? []);
      states = new Set(next.filter((arc) => arc.word === word).map((arc) => arc.to));
    }
    return states;
  }
}
