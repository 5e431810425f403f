import { describe, expect, it } from 'vitest';
import { clauses } from '../../../src/voice/shared/clauses.ts';
import { Endpointer } from '../../../src/voice/shared/endpointer.ts';
import { judge } from '../../../src/voice/shared/judge.ts';
import { advise } from '../../../src/voice/shared/level-advice.ts';
import { loudFrames } from '../../../src/voice/shared/loudness.ts';
import { mayGoOn } from '../../../src/voice/shared/patience.ts';
import { RoomWatch } from '../../../src/voice/shared/room-watch.ts';
import { vote } from '../../../src/voice/shared/vote.ts';

function events(levels: readonly (readonly [decibels: number, frames: number])[]) {
  const endpointer = new Endpointer();
  const kinds: string[] = [];
  for (const [decibels, frames] of levels) {
    for (let i = 0; i < frames; i++) {
      const event = endpointer.take(decibels);
      if (event && event.kind !== kinds.at(-1)) kinds.push(event.kind);
    }
  }
  return kinds;
}

describe('the ends of speech', () => {
  it('are found around a loud stretch in a quiet room', () => {
    expect(
      events([
        [-60, 100],
        [-30, 40],
        [-60, 40],
      ]),
    ).toEqual(['begun', 'quiet']);
  });

  it('are not found for a click shorter than a word', () => {
    expect(
      events([
        [-60, 100],
        [-20, 3],
        [-60, 40],
      ]),
    ).toEqual([]);
  });

  it('are found in a loud but steady room too', () => {
    expect(
      events([
        [-30, 200],
        [-18, 40],
        [-30, 40],
      ]),
    ).toEqual(['begun', 'quiet']);
  });

  it('are given up when the sound never ends, and the room is learnt anew', () => {
    expect(
      events([
        [-60, 100],
        [-30, 800],
        [-30, 300],
      ]),
    ).toEqual(['begun', 'too-long']);
  });
});

describe('the loud part of an utterance', () => {
  const spoken = () => {
    const endpointer = new Endpointer();
    for (let i = 0; i < 100; i++) endpointer.take(-60);
    for (let i = 0; i < 40; i++) endpointer.take(-20);
    return endpointer;
  };

  it('leaves out what lies far below its loudest, as talk farther off does', () => {
    expect(spoken().limitInside(22)).toBe(-42);
    expect(spoken().limitInside(12)).toBe(-32);
  });

  it('is measured by what lasts, never by a blow', () => {
    const endpointer = spoken();
    for (let i = 0; i < 12; i++) endpointer.take(0);
    expect(endpointer.limitInside(22)).toBe(-42);
  });

  it('goes far down where a number is awaited', () => {
    const endpointer = new Endpointer();
    endpointer.awaits = 'number';
    for (let i = 0; i < 100; i++) endpointer.take(-60);
    for (let i = 0; i < 40; i++) endpointer.take(-20);
    expect(endpointer.limit).toBe(-48);
  });

  it('ends while talk farther off goes on', () => {
    expect(
      events([
        [-60, 100],
        [-20, 40],
        [-40, 40],
      ]),
    ).toEqual(['begun', 'quiet']);
  });
});

describe('waiting for more', () => {
  const number = { unit: 'mm', min: 24.8, max: 25.2, decimals: 2 };
  it.each([
    ['twenty four', true],
    ['twenty four point nine', true],
    ['twenty four point nine five', false],
    ['next', false],
    ['no', true],
    ['stop', false],
  ])('after "%s" is %s', (text, waits) => {
    expect(
      mayGoOn(text, { phrases: ['next', 'no', 'no wrong', 'stop', 'stop stop'], number }),
    ).toBe(waits);
  });

  it('is never for numbers where none is wanted', () => {
    expect(mayGoOn('twenty four', { phrases: ['twenty four'] })).toBe(false);
  });
});

describe('judging a word', () => {
  const word = { word: 'next', from: 10, to: 50, score: -40 };
  const loud = Array.from({ length: 60 }, (_, i) => i >= 10 && i < 50);

  it('is sure when the words explain the sound better than free phones', () => {
    const judged = judge([word], [{ word: '+N+', from: 0, to: 60, score: -120 }], loud);
    expect(judged).toMatchObject({ text: 'next', margin: 1, uncovered: 0 });
  });

  it('sees how much loud sound no word explains', () => {
    const talk = loud.map((_, i) => i < 50);
    expect(judge([word], [], talk)?.uncovered).toBeCloseTo(0.2);
  });

  it('finds nothing in fillers and silence alone', () => {
    expect(judge([{ word: '<sil>', from: 0, to: 60, score: -9 }], [], loud)).toBeNull();
    expect(judge([{ word: '[SPEECH]', from: 0, to: 60, score: -9 }], [], loud)).toBeNull();
  });

  it('writes a second way of saying as the word itself', () => {
    expect(judge([{ ...word, word: 'five(2)' }], [], loud)?.text).toBe('five');
  });
});

describe('the voice patterns of one person', () => {
  const heard = { text: 'next', confidence: 0.55 };
  /** Distances in the person's own spread: 1 as two sayings of one phrase differ. */
  const ranked = (first: string, distance: number, second = 2) => [
    { phrase: first, distance },
    { phrase: first === 'next' ? 'stop' : 'next', distance: second },
    { phrase: 'hold', distance: second + 0.5 },
  ];
  it('lift a word they agree with', () => {
    expect(vote(heard, ranked('next', 1)).confidence).toBe(0.9);
  });
  it('lift a word that the recogniser alone would have refused', () => {
    const unsure = { text: 'next', confidence: 0.1 };
    expect(vote(unsure, ranked('next', 1.5)).confidence).toBeGreaterThan(0.5);
    expect(vote(unsure, ranked('next', 1.9, 2.5)).confidence).toBe(0.1);
  });
  it('refuse a word they contradict', () => {
    expect(vote(heard, ranked('stop', 1)).confidence).toBeLessThan(0.5);
  });
  it('carry a word alone only when they are clear and the recogniser is unsure', () => {
    const nothing = { text: '', confidence: 0 };
    expect(vote(nothing, ranked('next', 0.9)).text).toBe('next');
    expect(vote(nothing, ranked('next', 1.3)).text).toBe('');
    expect(vote(nothing, ranked('next', 0.9, 1.6)).text).toBe('');
    expect(vote(nothing, ranked('next', 0.9), false).text).toBe('');
  });
  it('carry a word that another is rather near to only with the second opinion', () => {
    const seconded = { text: 'stop', confidence: 0.1, also: 'next' };
    expect(vote(seconded, ranked('next', 1.1, 1.6)).text).toBe('next');
    expect(vote(seconded, ranked('next', 1.1, 1.6), false).confidence).toBe(0.1);
    expect(vote({ ...seconded, also: 'hold' }, ranked('next', 1.1, 1.6)).confidence).toBe(0.1);
    expect(vote(seconded, ranked('next', 1.1, 1.3)).confidence).toBe(0.1);
  });
  it('say nothing when they are undecided', () => {
    expect(vote(heard, ranked('stop', 1.95))).toEqual(heard);
  });
  it('say nothing with fewer than three phrases', () => {
    expect(vote(heard, ranked('stop', 0.5).slice(0, 2))).toEqual(heard);
  });
  it('never overrule a number, for which there are none', () => {
    const number = { text: 'twenty five', confidence: 0.9 };
    expect(vote(number, ranked('next', 0.5))).toEqual(number);
  });
});

describe('watching the room', () => {
  it('calls it too noisy after three loud seconds, and quiet again after three quiet ones', () => {
    const room = new RoomWatch();
    const states = [-15, -15, -15, -15, -50, -50, -50].map((decibels) => {
      room.level(decibels);
      return room.isNoisy;
    });
    expect(states).toEqual([false, false, true, true, true, true, false]);
  });

  it('calls it too noisy when faint speech was not understood four times', () => {
    const room = new RoomWatch();
    for (const over of [5, 4, 5, 5]) room.utterance(over, false);
    expect(room.isNoisy).toBe(true);
    expect(room.changed).toBe(true);
    expect(room.changed).toBe(false);
  });

  it('does not call it too noisy while it understands', () => {
    const room = new RoomWatch();
    for (const i of [1, 2, 3, 4, 5, 6, 7, 8]) room.utterance(5, i % 3 === 0);
    expect(room.isNoisy).toBe(false);
    expect(room.lets(-50)).toBe(false);
    expect(new RoomWatch().lets(-50)).toBe(true);
    expect(new RoomWatch().lets(-15)).toBe(false);
  });

  it('gives advice that fits', () => {
    expect(advise(-95, null)).toBe('switchedOff');
    expect(advise(-50, 9)).toBe('closer');
    expect(advise(-50, 30)).toBeUndefined();
  });

  it('does not take a click for loud speech', () => {
    const decibels = [-60, -60, -60, -20, -60, -60, -60, -30, -30, -30, -30, -30, -60];
    expect(loudFrames(decibels, -50).map(Number).join('')).toBe('0000000111110');
  });
});

it('a long line is cut at sentences, then clauses, then words, and nothing is lost', () => {
  const line =
    'Close the guard, then say closed. Now start the spindle and wait until it runs freely.';
  expect(clauses(line, 40)).toEqual([
    'Close the guard, then say closed.',
    'Now start the spindle and wait until it',
    'runs freely.',
  ]);
  expect(clauses('   ')).toEqual([]);
});
