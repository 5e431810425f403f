import { describe, expect, test } from 'vitest';
import { hear, noteIn } from '../../src/bench/index.ts';
import { englishLanguage } from '../../src/texts/index.ts';
import { begun, heardAs, hears, toBar } from './scripted.ts';

const spoken = (text: string) => heardAs(text, { from: 'speech', confidence: 0.3 });

describe('a note', () => {
  test('is kept in the words it was said in, and moves nothing', () => {
    const before = hears(begun(), ...toBar);
    const turn = hears(before, spoken('note the jaws are worn next'));
    expect(turn.at).toBe(before.at);
    expect(turn.entries.at(-1)).toMatchObject({
      outcome: 'note',
      event: { type: 'note', text: 'the jaws are worn next' },
    });
    expect(turn.line).toBe('Noted.');
  });

  test('is taken while a size waits for its answer, and the size still waits', () => {
    const waiting = hears(begun(), ...toBar, '25');
    const noted = hears(waiting, spoken('note dull insert'));
    expect(noted.state.talk).toBe(waiting.state.talk);
  });

  test('that is only the word asks for more, as the ear can', () => {
    expect(hears(begun(), 'note').line).toMatch(/Type the note/);
    const free = { ...begun().state, hearsFreely: true };
    const { effects } = hear(free, heardAs('note'));
    expect(effects).toContainEqual(
      expect.objectContaining({ kind: 'say', line: 'Say note, and then its words.' }),
    );
  });

  test('never swallows the drill', () => {
    const turn = hears(begun(), ...toBar, spoken('note stop'));
    expect(turn.at).toMatch(/hold/);
  });

  test.each(['notes on the drawing', 'no', 'another note', 'note'])('"%s" is none', (text) => {
    expect(noteIn(text, englishLanguage)).toBeUndefined();
  });
});
