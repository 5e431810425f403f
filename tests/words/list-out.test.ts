/** Lists and line cuts for the mouth. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { clauses, joinList } from '../../src/words/index.ts';

describe('joinList', () => {
  it.each([
    [[], ''],
    [['guard'], 'guard'],
    [['guard', 'chuck key'], 'guard and chuck key'],
    [['guard', 'chuck key', 'work'], 'guard, chuck key and work'],
  ])('%j is "%s"', (items, said) => {
    expect(joinList(items)).toBe(said);
  });

  it('ends with "or" where one is to be chosen', () => {
    expect(joinList(['closed', 'open'], 'or')).toBe('closed or open');
  });
});

describe('clauses', () => {
  it.each([
    ['Close the guard.', 40, ['Close the guard.']],
    ['Close the guard. Take the key out.', 20, ['Close the guard.', 'Take the key out.']],
    ['Close the guard. Take the key out.', 40, ['Close the guard. Take the key out.']],
    ['Close the guard, take the key out.', 20, ['Close the guard,', 'take the key out.']],
    [
      'Wind the tool clear and then stop the spindle',
      30,
      ['Wind the tool clear', 'and then stop the spindle'],
    ],
    [
      'Set the cross slide dial to twenty-four point nine five millimetres',
      42,
      ['Set the cross slide dial to', 'twenty-four point nine five millimetres'],
    ],
    ['unbreakableword', 5, ['unbreakableword']],
    ['', 10, []],
    ['   ', 10, []],
  ])('"%s" by %d', (line, most, pieces) => {
    expect(clauses(line, most)).toEqual(pieces);
  });

  it('loses no word, and no piece of several words is too long', () => {
    const word = fc.stringMatching(/^[a-z]{1,9}[.,;]?$/);
    fc.assert(
      fc.property(
        fc.array(word, { maxLength: 30 }),
        fc.integer({ min: 1, max: 60 }),
        (words, most) => {
          const pieces = clauses(words.join(' '), most);
          expect(pieces.join(' ')).toBe(words.join(' '));
          expect(pieces.every((piece) => piece.length <= most || !piece.includes(' '))).toBe(true);
        },
      ),
      { seed: 20261125, numRuns: 300 },
    );
  });
});
