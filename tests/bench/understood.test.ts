import { describe, expect, test } from 'vitest';
import { type Heard, replayRun } from '../../src/bench/index.ts';
import { begun, head, heardAs, hears, shippedJob, toBar } from './scripted.ts';

/** What the last of the words was taken for, as the record keeps it. */
function taken(...words: readonly (string | Heard)[]): string | undefined {
  return hears(begun(), ...words).entries.at(-1)?.understood;
}

describe('what a word was taken for', () => {
  test.each([
    ['where am I, please', 'where am i'],
    ['um, repeat', 'repeat'],
    ['what is a chuck', 'what is a chuck'],
    ['slate, what speed for brass', 'what speed for brass'],
  ])('is on record beside "%s", which moves nothing', (said, phrase) => {
    const entry = hears(begun(), said).entries.at(-1);
    expect(entry).toMatchObject({ heard: { text: said }, understood: phrase, event: null });
  });

  test('is the first phrase of the word where another was said', () => {
    expect(taken('next', 'goggles on')).toBe('glasses on');
  });

  test('stands beside all that was said behind a lead word, by an ear that needs one', () => {
    const whole = (...words: readonly string[]) =>
      hears(begun(), ...words).entries.map(({ heard, understood }) => [heard.text, understood]);
    expect(whole('next', 'other words', 'where am i').slice(-2)).toEqual([
      ['other words', 'other words'],
      ['where am i', 'where am i'],
    ]);
    expect(whole('next', 'what is', 'chuck').at(-1)).toEqual(['chuck', 'what is a chuck']);
    expect(whole('next', 'other words', 'never mind').at(-1)).toEqual(['never mind', 'never mind']);
    expect(whole('next', 'other words', 'what can i say').at(-1)).toEqual([
      'what can i say',
      'what can i say',
    ]);
  });

  test('is the question to the Slate, said in two breaths too', () => {
    expect(taken('slate', 'what speed for brass')).toBeUndefined();
    const question = 'spindle speed for thirty millimetres of brass';
    expect(taken('slate', question)).toBe(question);
  });

  test('is the word that an unsure ear is asked to hear again', () => {
    const unsure = heardAs('glasses on', { from: 'speech', confidence: 0.3 });
    expect(taken('next', unsure)).toBe('glasses on');
  });

  test('is the number as the job reads it, before anybody has said that it is right', () => {
    expect(taken(...toBar, 'twenty five point one')).toBe('25.10\u00a0mm');
  });

  test('is nothing where nothing was understood', () => {
    expect(hears(begun(), 'banana').entries.at(-1)).not.toHaveProperty('understood');
  });

  test('changes nothing in the replay, nor does a record from before it was kept', () => {
    const { entries, state } = hears(begun(), ...toBar, 'where am i', '25', 'correct');
    const older = entries.map(({ understood: _new, ...entry }) => entry);
    expect(older).not.toEqual(entries);
    for (const kept of [entries, older]) {
      const again = replayRun(shippedJob(), head, kept);
      expect(again.ok && again.state.snapshot.value).toEqual(state.snapshot.value);
    }
  });
});
