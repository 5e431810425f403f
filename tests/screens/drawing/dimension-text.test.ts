import { describe, expect, it } from 'vitest';
import { calloutText, needed, withLimits } from '../../../src/screens/drawing/dimension-text.ts';
import { ENGLISH_DRAWING as words } from '../../../src/screens/drawing/drawing-words.ts';

// Source: from memory: ISO 129-1, symmetrical deviations are written with ±, others as limits of size.
describe('a size with its limits', () => {
  it('is written with ± when they lie evenly about it', () => {
    expect(withLimits(16, { lower: 15.95, upper: 16.05 }, words)).toBe('16 ±0.05');
  });

  it('is written as lower–upper with equal decimals otherwise', () => {
    expect(withLimits(25, { lower: 24.98, upper: 25 }, words)).toBe('24.98–25.00');
  });

  it('is bare without limits', () => {
    expect(withLimits(12.5, {}, words)).toBe('12.5');
    expect(withLimits(12.5, { lower: 12 }, words)).toBe('12.5');
  });
});

describe('decimals', () => {
  it.each([
    [25, 0],
    [24.98, 2],
    [0.1 + 0.2, 1],
    [8.0224, 3],
  ])('of %d are %i', (value, decimals) => {
    expect(needed(value)).toBe(decimals);
  });
});

describe('a callout', () => {
  it('says depth for a bore, breadth for a groove, size and angle for a chamfer', () => {
    expect(calloutText({ kind: 'bore', id: 'b', from: 0, depth: 30, diameter: 8 }, words)).toBe(
      'Ø8 × 30 deep',
    );
    expect(calloutText({ kind: 'groove', id: 'g', from: 52, to: 55, diameter: 18.5 }, words)).toBe(
      'Ø18.5 × 3 wide',
    );
    expect(
      calloutText({ kind: 'chamfer', id: 'c', at: 0, end: 'right', size: 1, angle: 45 }, words),
    ).toBe('1 × 45°');
  });
});
