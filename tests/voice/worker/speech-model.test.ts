/**
 * The model's files are read as the engine reads them: it prints its own counts at the start ("42 CI-phone,
 * 137053 CD-phone, 3 emitstate/phone, 126 CI-sen, 5126 Sen", "42 codebook, 3 feature, size 128x13"), taken from
 * its log. What is laid for a room is checked at the two ends, no noise and much noise, where the answer is plain.
 */
import { beforeAll, describe, expect, it, vi } from 'vitest';
import { loadEngine } from '../../../src/cli/hear-engine.ts';
import { BANDS, bandsOf, COSINES, cosinesOf } from '../../../src/voice/shared/mel.ts';
import { densitiesFor } from '../../../src/voice/worker/room-densities.ts';
import {
  DENSITIES,
  INSIDE,
  readSpeechModel,
  type SpeechModel,
  STREAMS,
} from '../../../src/voice/worker/speech-model.ts';

let model: SpeechModel;
const none = new Float64Array(COSINES);

// Quick in itself, but machines that run all tests at once may be slow.
vi.setConfig({ testTimeout: 60_000, hookTimeout: 60_000 });

beforeAll(async () => {
  model = readSpeechModel((await loadEngine()).model);
});

const phone = (name: string) => model.phones.indexOf(name);

describe('the speech model as we read it', () => {
  it("has the engine's own counts", () => {
    expect(model.phones.length).toBe(42);
    expect(model.sounds).toBe(5126);
    expect(model.means.length).toBe(42 * STREAMS * DENSITIES * 13);
  });

  it('gives each lone phone its own three sounds, the first 126', () => {
    const lone = model.phones.flatMap((_, i) => model.soundsOf(i));
    expect([...lone].sort((a, b) => a - b)).toEqual(Array.from({ length: 126 }, (_, i) => i));
  });

  it('keeps the sounds of a phone in its own codebook, whatever stands beside it', () => {
    const wanted = { position: INSIDE, phone: phone('T'), left: phone('S'), right: phone('AA') };
    for (const sound of model.soundsBetween(wanted)) {
      expect(sound).toBeGreaterThanOrEqual(126);
      expect(model.bookOf[sound]).toBe(phone('T'));
    }
  });

  it('weighs the densities of a sound to about one, as probabilities', () => {
    for (const sound of [0, 77, 126, 3000, 5125]) {
      let sum = 0;
      for (let density = 0; density < DENSITIES; density++) sum += model.weight(sound, 1, density);
      expect(sum).toBeGreaterThan(0.9);
      expect(sum).toBeLessThan(1.1);
    }
  });

  it('stays in a state or leaves it, and nothing else', () => {
    const sum = Math.exp(model.stay(phone('IY'), 1)) + Math.exp(model.leave(phone('IY'), 1));
    expect(sum).toBeCloseTo(1, 2);
  });
});

describe('the densities for a room', () => {
  it("are the model's own in a silent room with no channel", () => {
    const { means } = densitiesFor(model, null, none);
    expect(means.every((value, i) => value === model.means[i])).toBe(true);
  });

  it('are the noise alone, mean and variance, where it drowns everything', () => {
    const variance = new Float64Array(BANDS).fill(0.5);
    const mean = new Float64Array(BANDS).fill(60);
    const laid = densitiesFor(model, { mean, variance }, none);
    for (const band of bandsOf(laid.means.subarray(0, COSINES))) expect(band).toBeCloseTo(60, 1);
    // Of independent bands of one variance: the sum of the squared weights of each cosine.
    for (let i = 0; i < COSINES; i++) {
      const weights = Array.from({ length: BANDS }, (_, j) => cosinesOf(one(j))[i] ?? 0);
      const expected = weights.reduce((sum, weight) => sum + weight * weight * 0.5, 0);
      expect(0.5 / (laid.inverse[i] ?? 0)).toBeCloseTo(expected, 3);
    }
  });
});

function one(band: number): Float64Array {
  return Float64Array.from({ length: BANDS }, (_, j) => (j === band ? 1 : 0));
}
