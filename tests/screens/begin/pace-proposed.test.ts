import { describe, expect, it } from 'vitest';
import { paceProposed } from '../../../src/screens/begin/pace-proposed.ts';
import { head } from '../../bench/scripted.ts';

const flow = head.flowId;
const finished = { ...head, status: 'finished' as const };

describe('the pace that is proposed', () => {
  it('is everything in full for who has not finished this flow', () => {
    expect(paceProposed([], 'Ida', flow)).toBe('first-time');
    expect(paceProposed([{ ...finished, operator: 'Marta' }], 'Ida', flow)).toBe('first-time');
    expect(paceProposed([{ ...finished, flowId: 'other' }], 'Ida', flow)).toBe('first-time');
    expect(paceProposed([head], 'Ida', flow)).toBe('first-time');
  });

  it('is familiar after the first finished run, and then the one used last', () => {
    expect(paceProposed([{ ...finished, pace: 'first-time' }], 'Ida ', flow)).toBe('familiar');
    const last = { ...finished, pace: 'own-pace' as const };
    expect(paceProposed([last, { ...finished, pace: 'first-time' }], 'Ida', flow)).toBe('own-pace');
  });
});
