import { describe, expect, it } from 'vitest';
import { emptyList, NumberLists, zeroList } from '../../src/proof/number-lists.ts';

describe('lists of numbers', () => {
  const lists = new NumberLists();

  it('are one list where they are equal', () => {
    expect(lists.idOf([1, 4])).toBe(lists.idOf([1, 4]));
    expect(lists.at(lists.idOf([1, 4]))).toBe(lists.at(lists.idOf([1, 4])));
    expect(lists.idOf([0])).toBe(zeroList);
  });

  it('are joined in rising order, each number once', () => {
    const [a, b] = [lists.idOf([1, 30]), lists.idOf([2, 30, 100])];
    expect(lists.at(lists.union(a, b))).toEqual([1, 2, 30, 100]);
    expect(lists.union(b, a)).toBe(lists.union(a, b));
    expect(lists.union(a, emptyList)).toBe(a);
  });
});
