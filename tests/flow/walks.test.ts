/** Every fault walk of the lathe, on one cut of a small flow: proved like a shipped flow. */

import { describe, expect, it } from 'vitest';
import { readFlow } from '../../src/flow/index.ts';
import { prove } from '../../src/proof/index.ts';
import { jobOf, kinds, latheKind, readyToStart } from './shipped.ts';

const named = latheKind().walks.filter(({ everywhere }) => !everywhere);
const speed = { is: 300, unit: 'rpm' };
const small = {
  followrest: 'flow',
  version: 1,
  id: 'part-off',
  revision: 1,
  title: 'Part off',
  about: 'A washer is parted off a bar that stands ready in the chuck.',
  machineKind: 'lathe',
  gates: {
    still: { spindle: 'stopped' },
    ready: { ...readyToStart, tailstock: 'back' },
  },
  steps: [
    { kind: 'tell', id: 'begin', title: 'Begin', say: 'Say next.' },
    {
      kind: 'cut',
      id: 'part',
      title: 'Part off',
      say: 'Feed the blade straight in.',
      gates: ['ready'],
      speed,
      troubles: named.map(({ id }) => id),
    },
    { kind: 'tell', id: 'over', title: 'Over', say: 'Say next.', gates: ['still'], next: 'end' },
  ],
};

describe('the fault walks', () => {
  const read = readFlow('part-off.json', JSON.stringify(small), kinds);
  if (!read.ok) throw new Error(read.faults.map(({ message }) => message).join('\n'));
  const job = jobOf(read.flow);

  it('are all on the step that names them', () => {
    const walks = job.plans.get('part')?.walks;
    expect(walks).toEqual(latheKind().walks.map(({ id }) => id));
  });

  it('break no claim of the lathe, whatever is said in them', () => {
    const proof = prove(job);
    expect(proof.verdict).toBe('proved');
  }, 60_000);
});
