import { describe, expect, it } from 'vitest';
import type { ToldProof, Verdict } from '../../../src/proof/index.ts';
import { proofLine } from '../../../src/screens/begin/proof-line.ts';
import { englishLanguage, proofTexts, sayIn } from '../../../src/texts/index.ts';

const say = sayIn(englishLanguage, proofTexts);
const sentence = 'The spindle never runs with the key in the chuck.';
const told = (verdict: Verdict): ToldProof => ({
  verdict,
  reason: verdict === 'proved' || verdict === 'broken' ? '' : '60 s',
  states: 1200,
  problems:
    verdict === 'broken'
      ? [{ claim: 'LATHE-KEY', sentence, step: 'Face the end', message: sentence, turns: [] }]
      : [],
});

describe('the line about a proof', () => {
  it.each(['broken', 'too-large', 'unseeable'] as const)('lets no job begin that is %s', (one) => {
    expect(proofLine({ is: 'told', proof: told(one) }, say)).toMatchObject({
      mood: 'bad',
      mayBegin: false,
    });
  });

  it('says how many situations were walked of what is proved', () => {
    const line = proofLine({ is: 'told', proof: told('proved') }, say);
    expect(line.mayBegin).toBe(true);
    expect(line.text).toContain('1,200');
  });

  it('says the claim that is broken, in its own sentence', () => {
    expect(proofLine({ is: 'told', proof: told('broken') }, say).text).toContain(sentence);
  });

  it('calls nothing proved that was not walked to its end', () => {
    for (const state of [
      undefined,
      { is: 'walking', places: 3 } as const,
      { is: 'stopped', why: 'person' } as const,
      { is: 'stopped', why: 'failed' } as const,
    ]) {
      const line = proofLine(state, say);
      expect(line.mood).not.toBe('good');
      expect(line.text).not.toMatch(/^Proved/);
    }
  });

  it('passes on why the numbers make no job', () => {
    expect(proofLine({ is: 'faulty', faults: ['Too thin.'] }, say)).toEqual({
      mood: 'bad',
      text: 'Too thin.',
      mayBegin: false,
    });
  });
});
