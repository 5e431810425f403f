import { isDeepStrictEqual } from 'node:util';
import fc from 'fast-check';
import { expect, it } from 'vitest';
import { sameData } from '../../src/logbook/same-data.ts';

const data = fc.jsonValue({ maxDepth: 2 });

it('agrees with the comparison of Node on pairs of any data', () => {
  fc.assert(
    fc.property(data, data, (one, other) => {
      expect(sameData(one, other)).toBe(isDeepStrictEqual(one, other));
      expect(sameData(one, structuredClone(one))).toBe(true);
    }),
    { seed: 20261125 },
  );
});

it.each([
  [{ a: 1, b: [2] }, { b: [2], a: 1 }, true],
  [{ a: 1 }, { a: 1, b: undefined }, false],
  [{ a: undefined }, { b: 1 }, false],
  [[], {}, false],
  [null, {}, false],
  [[1, 2], [2, 1], false],
])('compares %j with %j: %s', (one, other, same) => {
  expect(sameData(one, other)).toBe(same);
});
