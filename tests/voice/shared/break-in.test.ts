import { describe, expect, it } from 'vitest';
import { BreakIn } from '../../../src/voice/shared/break-in.ts';

/** An ear that has heard lines of the mouth so loud, in decibels over the room. */
function having(...lines: readonly number[]): BreakIn {
  const breaks = new BreakIn();
  for (const line of lines) breaks.line(line);
  return breaks;
}

describe('what breaks into the mouth by its loudness', () => {
  it('is refused when it is as soft as the mouth in a headset, however well it fits', () => {
    expect(having(12, 13).lets(13, 45, false)).toBe(false);
  });

  it('is taken from a person who speaks as before, on one opinion', () => {
    expect(having(12, 13).lets(42, 45, true)).toBe(true);
  });

  it('needs both opinions where the mouth is as loud as the person', () => {
    expect(having(44, 45).lets(45, 45, true)).toBe(false);
    expect(having(44, 45).lets(45, 45, false)).toBe(true);
  });

  it('needs both opinions before a word of the person was understood, and before a line was heard', () => {
    expect(having(12).lets(45, null, true)).toBe(false);
    expect(having(12).lets(45, null, false)).toBe(true);
    expect(having().lets(45, 45, true)).toBe(false);
  });

  it('is not refused for one who broke in unheard before', () => {
    expect(having(12, 13, 44, 12, 11).lets(44, 45, true)).toBe(true);
  });
});
