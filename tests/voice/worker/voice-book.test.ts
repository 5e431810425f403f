/** Patterns of a voice, made from sweeps of our own: each phrase is a tone that moves in its own way. */
import { describe, expect, it } from 'vitest';
import { VoiceBook } from '../../../src/voice/worker/voice-book.ts';

const PHRASES = ['next', 'hold', 'guard closed', 'stop'];

/** A tone from one pitch to another; `slow` stretches it as a second saying would be. */
function finding(phrase: string, slow = 1) {
  const at = PHRASES.indexOf(phrase);
  const length = Math.round(9600 * slow);
  const samples = Int16Array.from({ length }, (_, i) => {
    const hertz = 400 + 500 * at + ((at % 2 === 0 ? 900 : -250) * i) / length;
    return Math.round(8000 * Math.sin((2 * Math.PI * hertz * i) / 16_000));
  });
  const loud = Array.from({ length: Math.floor(length / 160) }, () => true);
  return { text: '', confidence: 0, samples, loud };
}

function taught(): VoiceBook {
  const book = new VoiceBook();
  for (const phrase of PHRASES) {
    for (const slow of [1, 1.2]) book.add(phrase, finding(phrase, slow), null);
  }
  return book;
}

describe('the book of a voice', () => {
  it('knows a phrase said again', () => {
    expect(taught().vote(finding('hold', 1.1), PHRASES, null).text).toBe('hold');
  });

  it('lets no short sound through in a room of blows, where longer ones pass', () => {
    const whole = finding('hold', 1.1);
    const short = { ...whole, loud: whole.loud.map((_, i) => i % 3 === 0) };
    expect(taught().vote(short, PHRASES, null).text).toBe('hold');
    expect(taught().vote(short, PHRASES, null, true).text).toBe('');
    expect(taught().vote(whole, PHRASES, null, true).text).toBe('hold');
  });

  it('says nothing of phrases that are not in force', () => {
    expect(taught().vote(finding('hold', 1.1), ['next', 'stop'], null).text).not.toBe('hold');
  });

  it('refuses a take that is unlike the takes before', () => {
    expect(taught().add('hold', finding('guard closed'), null)).toBeNull();
    expect(taught().add('hold', finding('hold', 1.1), null)).toBe(3);
  });

  it('is the same after it was kept as plain data', () => {
    const kept = JSON.parse(JSON.stringify(taught().kept()));
    const again = new VoiceBook(kept);
    expect(again.vote(finding('stop', 1.1), PHRASES, null).text).toBe('stop');
    expect(again.kept()).toEqual(kept);
  });

  it('leaves out what it cannot read', () => {
    const damaged = { version: 1, patterns: { next: ['%%%', 'AAAA', ''] } } as const;
    expect(new VoiceBook(damaged).kept()).toEqual({ version: 1, patterns: {} });
  });
});
