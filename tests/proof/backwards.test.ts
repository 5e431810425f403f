import { describe, expect, it } from 'vitest';
import { goodRows } from '../../src/proof/backwards.ts';
import type { Walk } from '../../src/proof/walk.ts';
import { check, judgedIn, step, walked } from './tiny-walk.ts';

const ending = {
  name: 'end',
  counts: ({ onward }: { readonly onward: boolean }) => onward,
  isGood: () => false,
  leaves: true,
};

/** Steps some of whose rows cannot be brought to the end by going on. */
function stuckIn(walk: Walk, leaves = true): readonly string[] {
  const good = goodRows(walk, judgedIn(walk), { ...ending, leaves });
  const stuck = [...good].flatMap(([id, spots]) =>
    [...walk.rowsIn(id)].some(([spot, rows]) => spots.get(spot) !== rows) ? [id] : [],
  );
  return stuck.sort();
}

describe('from where the end can be come to', () => {
  it('is every step of a flow that goes straight on', () => {
    expect(stuckIn(walked(check('first'), step('last', {})))).toEqual([]);
  });

  it('is not a loop that nothing leaves', () => {
    const loop = [step('one', { next: 'two' }), step('two', { next: 'one' })];
    expect(stuckIn(walked(...loop, step('last', {})))).toEqual(['one', 'two']);
  });

  it('is nowhere when ways out of steps do not count', () => {
    const walk = walked(check('first'), step('last', {}));
    expect(stuckIn(walk, false)).toEqual(['first', 'last']);
  });
});
