import { describe, expect, it } from 'vitest';
import { Recent } from '../../src/proof/recent.ts';

describe('the last answers', () => {
  it('are given for the very pair, or not at all', () => {
    const recent = new Recent(2);
    for (let a = 0; a < 50; a += 1) recent.set(a, a + 1, a * 2);
    const given = Array.from({ length: 50 }, (_, a) => recent.get(a, a + 1));
    expect(given.every((answer, a) => answer === -1 || answer === a * 2)).toBe(true);
    expect(given.some((answer) => answer >= 0)).toBe(true);
    expect(recent.get(1, 1)).toBe(-1);
  });
});
