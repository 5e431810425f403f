/** Expected ways of saying numbers: plain English usage, common practice, no source. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  type NumberPaths,
  numberPaths,
  numberPathsInside,
} from '../../../src/voice/shared/number-grammar.ts';
import { readNumber } from '../../../src/words/index.ts';

/** True when the graph has a way for exactly these words. */
function allows({ arcs, ends }: NumberPaths, text: string): boolean {
  let states = withPasses(arcs, new Set([0]));
  for (const word of text.split(' ')) {
    const next = arcs.filter((arc) => arc.word === word && states.has(arc.from));
    states = withPasses(arcs, new Set(next.map((arc) => arc.to)));
  }
  return ends.some((end) => states.has(end));
}

function withPasses(arcs: NumberPaths['arcs'], states: Set<number>): Set<number> {
  for (const state of states) {
    for (const arc of arcs) if (arc.word === '' && arc.from === state) states.add(arc.to);
  }
  return states;
}

/** How likely the likeliest way is that says exactly these words; 0 where there is none. */
function likelihood({ arcs, ends }: NumberPaths, text: string): number {
  const from = (state: number, words: readonly string[]): number => {
    const [word] = words;
    const ways = arcs
      .filter((arc) => arc.from === state && (arc.word === '' || arc.word === word))
      .map((arc) => (arc.weight ?? 1) * from(arc.to, arc.word === '' ? words : words.slice(1)));
    return Math.max(word === undefined && ends.includes(state) ? 1 : 0, ...ways);
  };
  return from(0, text.split(' '));
}

const millimetres = { unit: 'mm', min: 24.8, max: 25.2, decimals: 2 };
const speed = { unit: 'rev/min', min: 40, max: 2500, decimals: 0 };
const inches = { unit: 'in', min: 0, max: 0.75, decimals: 3 };

describe('the numbers an ear may hear', () => {
  it.each([
    'twenty four point nine',
    'twenty four point nine five',
    'twenty four point oh five',
    'two four point nine five',
    'twenty five',
    'twenty five point one millimetres',
  ])('allow "%s" for 24.80 to 25.20 mm', (text) => {
    expect(allows(numberPaths(millimetres), text)).toBe(true);
  });

  it('have each further decimal rarer than none, among all numbers and among those inside', () => {
    const inside = numberPathsInside(millimetres);
    for (const paths of [numberPaths(millimetres), inside].flatMap((one) => one ?? [])) {
      const short = likelihood(paths, 'twenty five point one');
      const long = likelihood(paths, 'twenty five point oh one');
      expect(long).toBeGreaterThan(0);
      expect(long).toBeLessThan(short / 1000);
    }
    expect(inside).not.toBeNull();
  });

  it.each([
    'twenty twenty',
    'point',
    'twenty four point',
    'twenty four point nine five one',
    'nine hundred',
    'oh',
    'four point nine point five',
  ])('never allow "%s" for 24.80 to 25.20 mm', (text) => {
    expect(allows(numberPaths(millimetres), text)).toBe(false);
  });

  it.each(['five hundred', 'one thousand two hundred and fifty', 'twelve hundred', 'ninety five'])(
    'allow "%s" for a spindle speed',
    (text) => {
      expect(allows(numberPaths(speed), text)).toBe(true);
    },
  );

  it.each(['twenty five thou', 'point oh two five', 'zero point five', 'one hundred thou'])(
    'allow "%s" in inches',
    (text) => {
      expect(allows(numberPaths(inches), text)).toBe(true);
    },
  );

  it('allow a reading a little outside the range, so that it can be questioned', () => {
    expect(allows(numberPaths(millimetres), 'twenty six point one')).toBe(true);
    expect(allows(numberPaths(millimetres), 'twenty three point nine')).toBe(true);
  });

  it('have a sign only where the range goes below nought', () => {
    const offset = { unit: 'mm', min: -0.5, max: 0.5, decimals: 2 };
    expect(allows(numberPaths(offset), 'minus point oh two')).toBe(true);
    expect(allows(numberPaths(millimetres), 'minus twenty five')).toBe(false);
  });
});

describe('the numbers inside the range', () => {
  it('are listed to the last decimal and no further', () => {
    const inside = numberPathsInside(millimetres);
    if (!inside) throw new Error('there are only 41 of them');
    expect(allows(inside, 'twenty four point eight')).toBe(true);
    expect(allows(inside, 'twenty five point two zero')).toBe(true);
    expect(allows(inside, 'twenty five point two one')).toBe(false);
    expect(allows(inside, 'twenty four point seven nine')).toBe(false);
  });

  it('are not listed when there are too many', () => {
    expect(numberPathsInside({ ...millimetres, min: 0, max: 100 })).toBeNull();
  });

  it('every value of a small range can be said, and is allowed anywhere too', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 0, max: 90_00 }),
        fc.integer({ min: 0, max: 40 }),
        (first, more) => {
          const wanted = { unit: 'mm', min: first / 100, max: (first + more) / 100, decimals: 2 };
          const inside = numberPathsInside(wanted);
          const value = (first + Math.floor(more / 2)) / 100;
          const [whole = '', fraction] = String(value).split('.');
          const spoken = [...whole, ...(fraction ? ['.', ...fraction] : [])]
            .map(digitName)
            .join(' ');
          return (
            inside !== null &&
            allows(inside, spoken) &&
            allows(numberPaths(wanted), spoken) &&
            readNumber(spoken, wanted)[0]?.value === value
          );
        },
      ),
      { seed: 4, numRuns: 40 },
    );
  });
});

const NAMES = 'zero one two three four five six seven eight nine'.split(' ');

function digitName(digit: string): string {
  return digit === '.' ? 'point' : (NAMES[Number(digit)] ?? '');
}
