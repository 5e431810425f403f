import { describe, expect, it } from 'vitest';
import { BreakIn } from '../../../src/voice/shared/break-in.ts';

/** An ear that has understood a person's words so loud, and heard lines of the mouth so loud, in decibels of full scale. */
function having(words: readonly number[], lines: readonly number[]): BreakIn {
  const breaks = new BreakIn();
  for (const word of words) breaks.word(word);
  for (const line of lines) breaks.line(line);
  return breaks;
}

describe('what breaks into the mouth by its loudness', () => {
  it('is refused when it is as soft as the mouth in a headset, however well it fits', () => {
    expect(having([-15], [-48, -47]).lets(-47, false)).toBe(false);
  });

  it('is taken from a person who speaks as before, on one opinion', () => {
    expect(having([-15], [-48, -47]).lets(-18, true)).toBe(true);
  });

  it('is refused where it is hardly louder than the lines of a loudspeaker, and softer than the person', () => {
    const lines = [-32, -26, -32, -31, -29, -27, -32];
    expect(having([-19, -20, -18], lines).lets(-25.6, false)).toBe(false);
    expect(having([-19, -20, -18], lines).lets(-20, true)).toBe(true);
  });

  it('needs both opinions where the mouth is as loud as the person', () => {
    expect(having([-15], [-16, -15]).lets(-15, true)).toBe(false);
    expect(having([-15], [-16, -15]).lets(-15, false)).toBe(true);
  });

  it('needs both opinions before a word of the person was understood, and before a line was heard', () => {
    expect(having([], [-48]).lets(-15, true)).toBe(false);
    expect(having([], [-48]).lets(-15, false)).toBe(true);
    expect(having([-15], []).lets(-15, true)).toBe(false);
    expect(having([-15], []).lets(-15, false)).toBe(true);
  });

  it('is not refused for one who broke in unheard before', () => {
    expect(having([-15], [-48, -47, -16, -48, -49]).lets(-16, true)).toBe(true);
  });

  it('goes by how the person speaks mostly: one shout does not make the next word too soft', () => {
    expect(having([-20, -21, -3, -20], [-48]).lets(-21, false)).toBe(true);
  });

  it('follows a person who goes farther away, in a few words', () => {
    const breaks = having([-15, -15, -15, -15, -15, -15, -15], [-48]);
    expect(breaks.lets(-30, false)).toBe(false);
    for (const word of [-30, -30, -30, -30]) breaks.word(word);
    expect(breaks.lets(-30, false)).toBe(true);
  });
});
