/** Values are read by `words`, which is held against published ways of saying numbers in its own tests. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { loadDictionary } from '../../../src/cli/hear-engine.ts';
import { buildGrammar } from '../../../src/voice/shared/grammar.ts';
import { isSameNumber, nearNumbers } from '../../../src/voice/shared/near-numbers.ts';
import { readNumber, sayNumber } from '../../../src/words/index.ts';

const wanted = { unit: 'mm', min: 17, max: 41, decimals: 2 };
const phrases = new Set(['next', 'wrong']);
const dictionary = loadDictionary();
const { grammar } = buildGrammar({ phrases: [...phrases], number: wanted }, dictionary);
const readAs = (text: string) => readNumber(text, wanted)[0]?.value;
/** As the ear writes them: no hyphens. */
const spoken = (hundredths: number) =>
  sayNumber(hundredths / 100, 'mm', 2)
    .replaceAll('-', ' ')
    .replace(' millimetres', '');
const values = fc.integer({ min: 1700, max: 4100 });

describe('numbers that one heard may have been', () => {
  it('are itself and those with one word otherwise', () => {
    const near = nearNumbers('thirty nine point six', grammar, phrases);
    expect(near).toContain('thirty nine point six');
    expect(near).toContain('thirty nine point eight');
    expect(near).toContain('twenty nine point six');
    expect(near).toContain('thirty point six');
    expect(near).toContain('thirty nine point oh six');
    expect(near).toContain('wrong thirty nine point six');
    expect(near).not.toContain('twenty nine point eight');
  });

  it('are never a word that moves the job, which differs in one word too', () => {
    expect(nearNumbers('seventeen', grammar, new Set())).toContain('next');
    expect(nearNumbers('seventeen', grammar, phrases)).not.toContain('next');
  });

  it('are few: they are scored while a person waits', () => {
    fc.assert(
      fc.property(values, (value) => {
        expect(nearNumbers(spoken(value), grammar, phrases).length).toBeLessThan(80);
      }),
      { seed: 1130, numRuns: 60 },
    );
  });

  it('can each be read as a number', () => {
    fc.assert(
      fc.property(values, (value) => {
        for (const near of nearNumbers(spoken(value), grammar, phrases)) {
          expect(readAs(near.replace(/^wrong /, '')), near).toBeTypeOf('number');
        }
      }),
      { seed: 1131, numRuns: 30 },
    );
  });

  it('are none where the grammar does not know the text', () => {
    expect(nearNumbers('ninety nine point six', grammar, phrases)).not.toContain(
      'ninety nine point six',
    );
  });
});

describe('the same number', () => {
  it.each([
    ['twenty five point oh two', 'twenty five point zero two'],
    ['twenty five point one', 'twenty five point one oh'],
    ['twenty five', 'twenty five point zero'],
    ['twenty five millimetres', 'twenty five'],
    ['twenty', 'twenty'],
  ])('is "%s" and "%s"', (one, other) => {
    expect(isSameNumber(one, other)).toBe(true);
  });

  it('has the same value', () => {
    fc.assert(
      fc.property(values, fc.nat(), (value, pick) => {
        const near = nearNumbers(spoken(value), grammar, phrases).filter(
          (text) => !text.includes('wrong'),
        );
        const other = near[pick % near.length] ?? '';
        if (isSameNumber(spoken(value), other)) expect(readAs(other)).toBe(value / 100);
        else expect(other).not.toBe(spoken(value));
      }),
      { seed: 1132, numRuns: 200 },
    );
  });

  it.each([
    ['twenty five point one', 'twenty five point oh one'],
    ['twenty', 'two'],
    ['twenty five point two', 'twenty five'],
  ])('is not "%s" and "%s"', (one, other) => {
    expect(isSameNumber(one, other)).toBe(false);
  });
});
