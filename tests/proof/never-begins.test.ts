import { describe, expect, it } from 'vitest';
import { prove, walkPlainly } from '../../src/proof/index.ts';
import { bigFlow } from './big-flow.ts';
import { jobOf } from './both-walks.ts';

describe('a job whose first step goes round by itself', () => {
  it('is broken in both walks, and throws in neither', () => {
    const step = { id: 'round', title: 'Round', say: 'Go round.', kind: 'do', next: 'round' };
    const over = { begins: { tool: 'clear' }, ends: { tool: 'clear' } };
    const job = jobOf({ ...(bigFlow(10) as object), gates: {}, steps: [{ ...step, ...over }] });
    if (!job) throw new Error('The flow cannot be read.');
    const [plain, reduced] = [walkPlainly(job), prove(job)];
    expect(plain.problems.map(({ claim }) => claim)).toEqual(['FORMAT-SETTLES']);
    expect(reduced).toEqual(plain);
  });
});
