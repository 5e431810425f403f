/** What is said where nothing may be concluded, in the language of the flow. */

import { describe, expect, it } from 'vitest';
import type { Job } from '../../src/flow/index.ts';
import { prove } from '../../src/proof/index.ts';
import { german } from '../../src/texts/de/index.ts';
import { withGuards } from './altered-job.ts';
import { check, tinyJob } from './tiny-walk.ts';

const job = tinyJob(check('first', { needs: { guard: 'closed' } }), check('last'));
const inGerman = (one: Job): Job => ({ ...one, flow: { ...one.flow, language: german } });

describe('a proof without a verdict', () => {
  it.each([
    [job, 'An answer is taken that is not wanted.'],
    [inGerman(job), 'Eine Antwort wird genommen, die nicht verlangt ist.'],
  ])('says what it could not see, and never that all is well', (one, reason) => {
    const proof = prove(withGuards(one, { answers: true }));
    expect(proof).toMatchObject({ verdict: 'unseeable', reason, problems: [], states: 0 });
  });

  it.each([
    [job, 'More than 1 nodes of sets.'],
    [inGerman(job), 'Mehr als 1 Knoten von Mengen.'],
  ])('says which limit it came to', (one, reason) => {
    expect(prove(one, { nodes: 1 })).toMatchObject({ verdict: 'too-large', reason, problems: [] });
  });
});
