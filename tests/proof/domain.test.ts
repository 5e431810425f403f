import { describe, expect, it } from 'vitest';
import { Domain } from '../../src/proof/domain.ts';
import { ValueSets } from '../../src/proof/value-sets.ts';

describe('the values seen at a spot', () => {
  const sets = new ValueSets(5);
  const one = sets.only([
    [0, 2],
    [6, 40],
  ]);
  const other = sets.only([
    [0, 1],
    [4, 3],
  ]);

  it('are those of every set that came, at small and at wide levels', () => {
    const domain = new Domain(sets, [6]);
    domain.include(one);
    domain.include(other);
    expect(domain.valuesAt(0)).toEqual([1, 2]);
    expect(domain.valuesAt(4)).toEqual([0, 3]);
    expect(domain.valuesAt(6)).toEqual([0, 40]);
  });

  it('have a new version only when a value is new', () => {
    const domain = new Domain(sets, [6]);
    domain.include(one);
    const { version } = domain;
    domain.include(one);
    expect(domain.version).toBe(version);
    domain.include(other);
    expect(domain.version).toBeGreaterThan(version);
  });

  it('are one and the same list wherever they are the same', () => {
    const [mine, yours] = [new Domain(sets, [6]), new Domain(sets, [6])];
    mine.include(sets.union(one, other));
    yours.include(one);
    expect(yours.valuesAt(6)).not.toBe(mine.valuesAt(6));
    yours.include(other);
    expect(yours.valuesAt(6)).toBe(mine.valuesAt(6));
    expect(yours.valuesAt(0)).toBe(mine.valuesAt(0));
  });
});
