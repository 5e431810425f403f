import { expect, test } from 'vitest';
import { saidNow } from '../../src/bench/index.ts';
import { begun, hears } from './scripted.ts';

test('how the mouth speaks is changed by one word, said back shortly, and moves nothing', () => {
  const start = begun();
  for (const [word, line, manner] of [
    ['slower', 'Slower.', { rate: 0.8, volume: 1 }],
    ['faster', 'Faster.', { rate: 1.2, volume: 1 }],
    ['quieter', 'Quieter.', { rate: 1, volume: 0.8 }],
  ] as const) {
    const turn = hears(start, word);
    expect(turn.line).toBe(line);
    expect(turn.state.manner).toEqual(manner);
    expect(turn.at).toBe(start.at);
    expect(turn.entries.at(-1)).toMatchObject({ outcome: 'note', said: line });
  }
});

test('a manner has an end each way, and says so', () => {
  const slowest = hears(begun(), ...Array.from({ length: 9 }, () => 'slower'));
  expect(slowest.line).toBe('No slower.');
  expect(slowest.state.manner?.rate).toBe(0.6);
  expect(hears(begun(), 'louder').line).toBe('No louder.');
  const quietest = hears(begun(), ...Array.from({ length: 9 }, () => 'quieter'));
  expect(quietest.state.manner?.volume).toBe(0.2);
  expect(hears(quietest, 'louder').state.manner?.volume).toBe(0.4);
});

test('the words for it are asks, so they cost nothing', () => {
  const kinds = saidNow(begun().state).items.filter(({ manner }) => manner);
  expect(kinds.map(({ kind }) => kind)).toEqual(['ask', 'ask', 'ask', 'ask']);
});
