/** Every turn of the talk is reached by words, and told. */
import { describe, expect, test } from 'vitest';
import { type Heard, turnOf } from '../../src/bench/index.ts';
import { begun, heardAs, hears, toBar } from './scripted.ts';

const bar = hears(begun(), ...toBar);
const turnAfter = (...words: readonly (string | Heard)[]) =>
  turnOf(hears(bar, ...words).state, 'listening');

describe('the turn', () => {
  test('is speaking or listening while nothing else waits', () => {
    expect(turnOf(bar.state, 'speaking')).toBe('speaking');
    expect(turnOf(bar.state, 'listening')).toBe('listening');
  });

  test('is reading back from a number to its answer, whoever sounds', () => {
    const { state } = hears(bar, '25');
    expect(turnOf(state, 'speaking')).toBe('reading-back');
    expect(turnAfter('25')).toBe('reading-back');
    expect(turnAfter('25', 'correct')).toBe('listening');
    expect(turnAfter('25', 'wrong')).toBe('listening');
  });

  test('is asking again until something is understood', () => {
    expect(turnAfter('mumble')).toBe('asking-again');
    expect(turnAfter('mumble', 'repeat')).toBe('listening');
    expect(turnAfter(heardAs('we had pork pies for lunch on Friday'))).toBe('listening');
  });

  test('is held from a hold to its end', () => {
    expect(turnAfter('hold')).toBe('held');
    expect(turnAfter('stop')).toBe('held');
  });

  test('is deaf before anything else: then the keys must do', () => {
    expect(turnOf(hears(bar, '25').state, 'deaf')).toBe('deaf');
    expect(turnOf(hears(bar, 'hold').state, 'deaf')).toBe('deaf');
  });
});
