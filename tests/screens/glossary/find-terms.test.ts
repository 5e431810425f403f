import { describe, expect, it } from 'vitest';
import { glossaryIn } from '../../../src/bench/index.ts';
import { findTerms } from '../../../src/screens/glossary/find-terms.ts';
import { englishLanguage } from '../../../src/texts/index.ts';

const terms = glossaryIn(englishLanguage);
const found = (typed: string) => findTerms(terms, typed, 'en-GB').map(({ id }) => id);

describe('the search among trade words', () => {
  it('gives every word, by the alphabet, while nothing is typed', () => {
    const all = findTerms(terms, '', 'en-GB').map(({ term }) => term);
    expect(all).toHaveLength(terms.length);
    expect(all).toEqual([...all].sort((a, b) => a.localeCompare(b, 'en-GB')));
  });

  it('puts the word itself first, then what begins with it, then what holds it', () => {
    expect(found('chuck')[0]).toBe('chuck');
    expect(found('tail')[0]).toMatch(/^tailstock/);
    expect(found('top slide')[0]).toBe('compound');
    expect(found('half nut')).toContain('half-nuts');
    expect(found('wound round a bar')).toEqual(['thread']);
  });

  it('gives nothing for what nobody wrote of', () => {
    expect(found('zzz')).toEqual([]);
  });
});
