import { describe, expect, it } from 'vitest';
import { passesThrough, passRows } from '../../../src/screens/plots/pass-rows.ts';

describe('the rows of a pass plan', () => {
  it('join each diameter to the one before it, the last as finishing', () => {
    expect(passesThrough(30, [27.5, 25.5, 25], true)).toEqual([
      { before: 30, after: 27.5, finishing: false },
      { before: 27.5, after: 25.5, finishing: false },
      { before: 25.5, after: 25, finishing: true },
    ]);
  });

  it('are all there when they fit', () => {
    const passes = passesThrough(30, [29, 28, 27], false);
    expect(passRows(passes, 0).map((row) => row.kind)).toEqual(['pass', 'pass', 'pass']);
  });

  it('leave out the middle of a long plan, but never the pass under way, and count what is left out', () => {
    const passes = passesThrough(
      100,
      Array.from({ length: 40 }, (_, index) => 99 - index),
      true,
    );
    for (let current = 0; current <= 40; current++) {
      const rows = passRows(passes, current);
      const shown = rows.flatMap((row) => (row.kind === 'pass' ? [row.index] : []));
      const leftOut = rows.reduce((sum, row) => sum + (row.kind === 'left-out' ? row.count : 0), 0);
      expect(shown.length + leftOut).toBe(40);
      expect(rows.length).toBeLessThanOrEqual(9);
      if (current < 40) expect(shown).toContain(current);
    }
  });
});
