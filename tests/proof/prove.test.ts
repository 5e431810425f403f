import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { Memory } from '../../src/proof/index.ts';
import { compare } from './both-walks.ts';
import { randomFlow } from './random-flow.ts';

describe('the reduced walk', () => {
  it('breaks the same claims as the plain one, by paths of the same length, on random flows', () => {
    const memory = new Memory();
    const seen = new Map<string, number>();
    fc.assert(
      fc.property(randomFlow, (flow) => {
        const outcome = compare(flow, 1_500, memory);
        const key = typeof outcome === 'string' ? outcome : 'differs';
        seen.set(key, (seen.get(key) ?? 0) + 1);
        expect(typeof outcome === 'string' ? '' : outcome.differs).toBe('');
      }),
      { seed: 1787, numRuns: 60 },
    );
    expect(seen.get('same') ?? 0).toBeGreaterThan(25);
  }, 120_000);
});
