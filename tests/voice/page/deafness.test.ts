/** Why an ear is deaf, in every language there is. */
import { describe, expect, it } from 'vitest';
import { german } from '../../../src/texts/de/index.ts';
import { englishLanguage } from '../../../src/texts/index.ts';
import { deafness, NotStarted, notStarted } from '../../../src/voice/page/deafness.ts';
import { openMicrophone } from '../../../src/voice/page/microphone.ts';
import { judgeEnd, NO_TROUBLES } from '../../../src/voice/page/recognition-policy.ts';

/** Codes of errors as the browsers give them, and what each is to the person. */
const codes = [
  ['not-allowed', 'refused'],
  ['service-not-allowed', 'missing'],
  ['language-not-supported', 'missing'],
] as const;

describe('a deaf ear', () => {
  it.each(codes)('tells "%s" as %s, in English and in German', (code, kind) => {
    const { next } = judgeEnd(NO_TROUBLES, { kind: 'error', code }, true);
    if (next.kind !== 'deaf') throw new Error(`${code} is nothing`);
    const told = [englishLanguage, german].map((language) => deafness(language, next.why));
    expect(told.map((one) => one.kind)).toEqual([kind, kind]);
    expect(new Set(told.map(({ sentence }) => sentence)).size).toBe(2);
  });

  it('tells a page without a microphone in the language of the page', async () => {
    const free = async () => () => {};
    expect(await openMicrophone(undefined, free, german)).toMatchObject({
      sentence: expect.stringContaining('Mikrofon'),
    });
  });

  it('tells why the ear of this page did not start: what the program said, or ours', () => {
    expect(notStarted(englishLanguage, new Error('The model is not there.')).sentence).toBe(
      'The ear of this page did not start. The model is not there. Try again, or use keys.',
    );
    expect(notStarted(german, new NotStarted('tooSlow')).sentence).toContain('dreißig Sekunden');
  });
});
