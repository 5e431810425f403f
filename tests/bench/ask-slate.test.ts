import { describe, expect, test } from 'vitest';
import { listenFor } from '../../src/bench/index.ts';
import { begun, heardAs, hears } from './scripted.ts';

const question = 'speed for thirty brass';

describe('a question to the Slate in two breaths', () => {
  test('is opened by "slate", heard as a question, and answered; the job stands still', () => {
    const start = hears(begun(), 'next');
    const open = hears(start, 'slate');
    expect(open.line).toBe('Ask.');
    const answered = hears(open, question);
    expect(answered.line).toMatch(/^\w.*\./);
    expect(answered.at).toBe(start.at);
    expect(answered.state.slateAsked).toBeUndefined();
    expect(answered.entries.at(-1)).toMatchObject({ event: null, outcome: 'asked' });
    expect(hears(answered, 'glasses on').at).toBe(hears(start, 'glasses on').at);
  });

  test('meanwhile the ear listens for questions, the drill and a hold, and for no word of the job', () => {
    const { phrases } = listenFor(hears(begun(), 'next', 'slate').state);
    expect(phrases).toContain(question);
    expect(phrases).toContain('stop');
    expect(phrases).not.toContain('glasses on');
    expect(phrases).toEqual(expect.arrayContaining(['repeat', 'next', 'wrong']));
  });

  test('a word of the job that is heard meanwhile does not move it', () => {
    const open = hears(begun(), 'next', 'slate');
    expect(hears(open, heardAs('glasses on', { from: 'speech' })).at).toBe(open.at);
  });

  test('"stop" goes before it', () => {
    const turn = hears(begun(), 'next', 'slate', 'stop');
    expect(turn.line).toMatch(/^Press the emergency stop\./);
    expect(turn.state.slateAsked).toBeUndefined();
  });

  test('is left by "never mind", "next" or "wrong", and by two sentences that are no question', () => {
    const open = hears(begun(), 'slate');
    for (const word of ['never mind', 'next', 'wrong']) {
      const left = hears(open, word);
      expect(left.line).toBe('Back to the job.');
      expect(left.at).toBe(open.at);
    }
    expect(hears(open, 'repeat').line).toBe('Ask.');
    const once = hears(open, 'hello there');
    expect(once.state.slateAsked).toBe(1);
    const twice = hears(once, 'hello there');
    expect(twice.line).toBe('Back to the job.');
    expect(twice.state.slateAsked).toBeUndefined();
  });

  test('a key goes to the job, as the screen shows it', () => {
    const open = hears(begun(), 'slate');
    const turn = hears(open, heardAs('next', { from: 'key' }));
    expect(turn.at).toBe('protect/open');
    expect(turn.state.slateAsked).toBeUndefined();
  });
});
