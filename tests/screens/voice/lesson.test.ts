import { describe, expect, it } from 'vitest';
import { learnt, nextWord, wordAfter } from '../../../src/screens/voice/lesson.ts';

const words = ['stop', 'hold', 'next'];

describe('a lesson', () => {
  it('begins with the first word that is not known', () => {
    expect(nextWord({ words, known: {} }, null)).toBe('stop');
    expect(nextWord({ words, known: { stop: 2 } }, null)).toBe('hold');
  });

  it('stays at a word until it was said twice', () => {
    expect(wordAfter({ words, known: { stop: 1 } }, 'stop')).toBe('stop');
    expect(wordAfter({ words, known: { stop: 2 } }, 'stop')).toBe('hold');
  });

  it('comes back to a word that was passed over', () => {
    expect(nextWord({ words, known: { hold: 2, next: 2 } }, 'next')).toBe('stop');
  });

  it('is over when every word was said twice, and counts them', () => {
    const known = { stop: 2, hold: 3, next: 2, other: 2 };
    expect(nextWord({ words, known }, 'next')).toBeNull();
    expect(learnt({ words, known })).toBe(3);
    expect(learnt({ words, known: { stop: 1 } })).toBe(0);
  });
});
