import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { noRows, type Row, type ValueSet, ValueSets } from '../../src/proof/value-sets.ts';

/** Rows of three levels as text, so that plain sets of text are the measure. */
const row = fc.tuple(fc.nat({ max: 2 }), fc.nat({ max: 2 }), fc.nat({ max: 3 }));
const rows = fc.array(row, { maxLength: 8 });
type Rows = readonly (readonly number[])[];

function setOf(sets: ValueSets, all: Rows): ValueSet {
  const one = (values: readonly number[]): Row => values.map((value, level) => [level, value]);
  return all.reduce((sum, values) => sets.union(sum, sets.only(one(values))), noRows);
}

const distinct = (all: Rows) => new Set(all.map((one) => one.join(' ')));

/** Two levels are small: the third is found by looking into the diagram. */
const made = () => new ValueSets(2);

describe('sets of rows', () => {
  it('are one number where they hold the same rows, in whatever order these came', () => {
    fc.assert(
      fc.property(rows, (all) => {
        const sets = made();
        expect(setOf(sets, [...all].reverse())).toBe(setOf(sets, all));
        expect(sets.count(setOf(sets, all))).toBe(distinct(all).size);
      }),
      { seed: 3, numRuns: 100 },
    );
  });

  it('are joined, lessened and met as sets of text are', () => {
    fc.assert(
      fc.property(rows, rows, (a, b) => {
        const sets = made();
        const [one, other] = [setOf(sets, a), setOf(sets, b)];
        const there = distinct(b);
        const left = a.filter((values) => !there.has(values.join(' ')));
        const common = a.filter((values) => there.has(values.join(' ')));
        expect(sets.union(one, other)).toBe(setOf(sets, [...a, ...b]));
        expect(sets.minus(one, other)).toBe(setOf(sets, left));
        expect(sets.both(one, other)).toBe(setOf(sets, common));
      }),
      { seed: 4, numRuns: 100 },
    );
  });

  it('are cut by a value, and changed in it, row by row', () => {
    fc.assert(
      fc.property(rows, fc.nat({ max: 2 }), fc.nat({ max: 2 }), (all, level, value) => {
        const sets = made();
        const set = setOf(sets, all);
        const put = (values: readonly number[]) => values.with(level, value);
        const here = all.filter((values) => values[level] === value);
        expect(sets.where(set, level, value)).toBe(setOf(sets, here));
        expect(sets.with(set, level, value)).toBe(setOf(sets, all.map(put)));
        const held = [...new Set(all.map((values) => values[level] ?? 0))].sort();
        expect(sets.valuesAt(set, level)).toEqual(held);
      }),
      { seed: 5, numRuns: 100 },
    );
  });

  it('tell which of their rows come into a set once values are put in', () => {
    fc.assert(
      fc.property(rows, rows, fc.nat({ max: 2 }), (from, into, value) => {
        const sets = made();
        const there = distinct(into);
        const coming = from.filter((values) => there.has(values.with(1, value).join(' ')));
        const found = sets.comingInto(setOf(sets, from), setOf(sets, into), [[1, value]]);
        expect(found).toBe(setOf(sets, coming));
      }),
      { seed: 6, numRuns: 100 },
    );
  });
});
