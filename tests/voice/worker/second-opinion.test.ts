/**
 * The second opinion on made speech (flite from npm) in made shop noise: which phrase of a list was said is known,
 * since the text was given to the voice.
 */
import { beforeAll, describe, expect, it, vi } from 'vitest';
import { loadDictionary, loadEngine } from '../../../src/cli/hear-engine.ts';
import { Channel } from '../../../src/voice/shared/channel.ts';
import { buildGrammar } from '../../../src/voice/shared/grammar.ts';
import { bandLogs, meanOf } from '../../../src/voice/shared/mel.ts';
import { type Opinion, SecondOpinion } from '../../../src/voice/worker/second-opinion.ts';
import { speech } from '../made-speech.ts';
import { activeLevel, hum, mixed, random } from '../shop-noise.ts';

const PHRASES = ['guard closed', 'hands clear', 'tool clear', 'key in', 'next', 'hold', 'stop'];
const RATE = 16_000;
const DECIBELS = 12;

let second: SecondOpinion;
let room: Float32Array;

// Quick in itself, but machines that run all tests at once may be slow.
vi.setConfig({ testTimeout: 60_000, hookTimeout: 60_000 });

/** A machine hums; the ear has heard it for some seconds, and the voice in a quiet room before. */
beforeAll(async () => {
  second = new SecondOpinion((await loadEngine()).model);
  const { spoken, waysOf } = buildGrammar({ phrases: PHRASES }, loadDictionary());
  second.use(spoken, waysOf);
  room = hum(8 * RATE, random(3));
  const voice = await speech('flite:slt', 'where am i');
  const silent = new Int16Array(4 * RATE);
  const machine = mixed(silent, room.subarray(0, silent.length), DECIBELS, activeLevel(voice));
  for (let at = 0; at < machine.length; at += RATE) {
    second.learnRoom(machine.subarray(at, at + RATE));
  }
  const channel = new Channel();
  channel.learn(loudest(bandLogs(voice)), null);
  second.lay({ noise: meanOf(bandLogs(machine)), channel: channel.mean, warp: 1 });
});

/** The louder half: pauses tell nothing of a voice. */
function loudest(frames: readonly Float64Array[]): readonly Float64Array[] {
  const loudness = (frame: Float64Array) => frame.reduce((sum, band) => sum + band, 0);
  return [...frames].sort((a, b) => loudness(b) - loudness(a)).slice(0, frames.length / 2);
}

async function opinionOf(text: string): Promise<Opinion | null> {
  const voice = await speech('flite:slt', text);
  const noise = room.subarray(5 * RATE, 5 * RATE + voice.length);
  return second.of(mixed(voice, noise, DECIBELS, activeLevel(voice)));
}

describe('the second opinion', () => {
  it.each(['guard closed', 'tool clear', 'next'])(
    'finds "%s" in the hum of a machine',
    async (text) => {
      const opinion = await opinionOf(text);
      expect(opinion?.phrase).toBe(text);
      expect(opinion?.lead).toBeGreaterThan(0);
    },
  );

  it('finds that other talk is none of ours, or that it hardly fits', async () => {
    const opinion = await opinionOf('coffee');
    expect(opinion?.isOurs === false || (opinion?.fit ?? 0) < -1.8).toBe(true);
  });
});
