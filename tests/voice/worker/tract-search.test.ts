/**
 * The resonances of a tube lie inversely to its length (Fant, Acoustic Theory of Speech Production, 1960; from
 * memory): sound played faster by a part is the sound of a tract shorter by that part. So how much the warp must
 * change is known.
 */
import { beforeAll, expect, it, vi } from 'vitest';
import { loadDictionary, loadEngine } from '../../../src/cli/hear-engine.ts';
import { Channel } from '../../../src/voice/shared/channel.ts';
import { buildGrammar } from '../../../src/voice/shared/grammar.ts';
import { resampleSound } from '../../../src/voice/shared/index.ts';
import { bandLogs } from '../../../src/voice/shared/mel.ts';
import type { EngineParts } from '../../../src/voice/worker/engine.ts';
import { TractSearch } from '../../../src/voice/worker/tract-search.ts';
import { speech } from '../made-speech.ts';

const RATE = 16_000;
const PHRASES = ['guard closed', 'repeat', 'spindle running', 'where am i'];
/** Natural logarithm of power below the loudest frame. */
const LOUD = 5;

let model: EngineParts['model'];
let waysOf: (word: string) => readonly string[];

// Quick in itself, but machines that run all tests at once may be slow.
vi.setConfig({ testTimeout: 60_000, hookTimeout: 60_000 });

beforeAll(async () => {
  model = (await loadEngine()).model;
  waysOf = buildGrammar({ phrases: PHRASES }, loadDictionary()).waysOf;
});

async function heardFrom(phrase: string, faster: number) {
  const samples = resampleSound(await speech('flite:rms', phrase), RATE * faster, RATE);
  const logs = bandLogs(samples);
  const levels = logs.map((bands) => bands.reduce((sum, band) => sum + band, 0) / bands.length);
  const loud = levels.map((level) => level > Math.max(...levels) - LOUD);
  const channel = new Channel();
  channel.learn(
    logs.filter((_, i) => loud[i]),
    null,
  );
  return { samples, loud, noise: null, channel: channel.mean };
}

async function learntFrom(faster: number, kept?: string): Promise<TractSearch> {
  const search = new TractSearch(model, kept);
  for (const phrase of PHRASES) search.learn(phrase, await heardFrom(phrase, faster), waysOf);
  return search;
}

it('a shorter tract is given higher bands, by nearly as much, a longer one lower', async () => {
  expect((await learntFrom(1)).warp).toBe(1);
  expect((await learntFrom(1.12)).warp).toBeGreaterThan(1.07);
  expect((await learntFrom(1.12)).warp).toBeLessThan(1.16);
  expect((await learntFrom(0.9)).warp).toBeLessThan(0.95);
});

it('before a word is understood a high voice is guessed, and a usual one left as it is', async () => {
  const guessedFrom = async (faster: number) => {
    const search = new TractSearch(model);
    for (const phrase of PHRASES) search.guess(await heardFrom(phrase, faster));
    return search.warp;
  };
  expect(await guessedFrom(1)).toBe(1);
  expect(await guessedFrom(1.15)).toBeGreaterThan(1.05);
});

it('what was learnt is kept, and what is kept otherwise is no knowledge', async () => {
  expect(new TractSearch(model).text).toBe('');
  const learnt = await learntFrom(1.12);
  expect(new TractSearch(model, learnt.text).warp).toBe(learnt.warp);
  for (const kept of ['', 'high', '7', 'NaN']) {
    expect(new TractSearch(model, kept)).toMatchObject({ warp: 1, text: '' });
  }
});

it('somebody else who speaks now is learnt in a few words', async () => {
  const search = new TractSearch(model, '1.12');
  for (const phrase of PHRASES) {
    search.learn(phrase, await heardFrom(phrase, 0.95), waysOf);
  }
  expect(search.warp).toBeLessThan(1.03);
});
