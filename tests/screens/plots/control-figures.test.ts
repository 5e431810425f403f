import { describe, expect, it } from 'vitest';
import { controlFigures } from '../../../src/screens/plots/control-figures.ts';
import { englishLanguage } from '../../../src/texts/index.ts';

describe('the figures of a control chart', () => {
  // Source: from memory: ISO 7870-2, subgroups of three: A2 1.023, D3 0, D4 2.574; the rest by hand:
  // means 10, 13, 16 (grand mean 13), ranges 2, 4, 3 (mean range 3).
  it('have limits from the mean range by the printed factors', () => {
    const groups = [
      [9, 10, 11],
      [11, 13, 15],
      [14.5, 16, 17.5],
    ];
    const figures = controlFigures(groups, englishLanguage);
    if (!figures.ok) throw new Error(figures.fault);
    expect(figures.means.values).toEqual([10, 13, 16]);
    expect(figures.ranges.values).toEqual([2, 4, 3]);
    expect(figures.means.centre).toBeCloseTo(13, 9);
    expect(figures.means.upper).toBeCloseTo(13 + 1.023 * 3, 6);
    expect(figures.means.lower).toBeCloseTo(13 - 1.023 * 3, 6);
    expect(figures.ranges.centre).toBeCloseTo(3, 9);
    expect(figures.ranges.upper).toBeCloseTo(2.574 * 3, 6);
    expect(figures.ranges.lower).toBe(0);
  });

  it('say what is wrong when subgroups differ in number or are single readings', () => {
    expect(controlFigures([[1, 2], [3]], englishLanguage)).toEqual({
      ok: false,
      fault: 'Subgroup 2 holds 1 readings, the first 2; all must hold as many.',
    });
    expect(controlFigures([[1], [2]], englishLanguage).ok).toBe(false);
    expect(controlFigures([], englishLanguage).ok).toBe(false);
  });
});
