import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { patternDistance, patternOf } from '../../../src/voice/shared/pattern.ts';
import { resampleSound } from '../../../src/voice/shared/resample.ts';
import { readWav, WavFault, writeWav } from '../../../src/voice/shared/wav.ts';

const tone = (hertz: number, rate: number, seconds = 0.5) =>
  Int16Array.from({ length: rate * seconds }, (_, i) =>
    Math.round(10_000 * Math.sin((2 * Math.PI * hertz * i) / rate)),
  );

function level(samples: Int16Array): number {
  const middle = samples.subarray(samples.length / 4, (3 * samples.length) / 4);
  return Math.sqrt(middle.reduce((sum, s) => sum + s * s, 0) / middle.length);
}

describe('WAV files', () => {
  it('come back as they were written', () => {
    fc.assert(
      fc.property(
        fc.array(fc.integer({ min: -32_768, max: 32_767 }), { maxLength: 50 }),
        fc.constantFrom(8000, 16_000, 44_100, 48_000),
        (values, rate) => {
          const samples = Int16Array.from(values);
          const back = readWav(writeWav({ rate, samples }));
          expect(back.rate).toBe(rate);
          expect([...back.samples]).toEqual(values);
        },
      ),
      { seed: 1, numRuns: 30 },
    );
  });

  /** Byte places from "Multimedia Programming Interface and Data Specifications 1.0", 1991. */
  it.each([
    ['two channels', 22, 2, /2 channels/],
    ['eight bits', 34, 8, /8-bit/],
    ['a packed format', 20, 85, /format 85/],
  ])('with %s are refused with a sentence', (_name, at, value, sentence) => {
    const bytes = writeWav({ rate: 16_000, samples: new Int16Array(10) });
    new DataView(bytes.buffer).setUint16(at, value, true);
    expect(() => readWav(bytes)).toThrow(sentence);
    expect(() => readWav(bytes)).toThrow(WavFault);
  });

  it('never fail in another way, whatever the bytes', () => {
    fc.assert(
      fc.property(fc.uint8Array({ maxLength: 80 }), fc.boolean(), (noise, withHead) => {
        const head = writeWav({ rate: 16_000, samples: new Int16Array(0) }).subarray(0, 12);
        const bytes = withHead ? Uint8Array.from([...head, ...noise]) : noise;
        try {
          readWav(bytes);
        } catch (problem) {
          expect(problem).toBeInstanceOf(WavFault);
        }
      }),
      { seed: 2, numRuns: 200 },
    );
  });
});

describe('changing the rate', () => {
  it.each([8000, 22_050, 44_100, 48_000])('from %i keeps a 1 kHz tone as loud', (rate) => {
    const out = resampleSound(tone(1000, rate), rate, 16_000);
    expect(level(out)).toBeGreaterThan(0.97 * level(tone(1000, rate)));
    expect(level(out)).toBeLessThan(1.03 * level(tone(1000, rate)));
    expect(out.length).toBeCloseTo(8000, -1);
  });

  it('takes away a 12 kHz tone instead of folding it down to 4 kHz', () => {
    const out = resampleSound(tone(12_000, 48_000), 48_000, 16_000);
    expect(level(out)).toBeLessThan(0.01 * level(tone(12_000, 48_000)));
  });
});

describe('the distance of two sounds', () => {
  const sweep = (up: boolean, seconds: number) => {
    const length = 16_000 * seconds;
    return Int16Array.from({ length }, (_, i) => {
      const part = up ? i / length : 1 - i / length;
      return Math.round(8000 * Math.sin((2 * Math.PI * (500 + 1500 * part) * i) / 16_000));
    });
  };

  const seen = (sound: Int16Array) =>
    patternOf(
      sound,
      Array.from({ length: sound.length / 160 }, () => true),
      null,
    );

  it('is nothing from a sound to itself', () => {
    const sound = seen(sweep(true, 0.5));
    expect(patternDistance(sound, sound)).toBe(0);
  });

  it('is smaller to the same sound spoken slower than to another', () => {
    const sound = seen(sweep(true, 0.5));
    const slower = patternDistance(sound, seen(sweep(true, 0.7)));
    expect(slower).toBeLessThan(0.5 * patternDistance(sound, seen(sweep(false, 0.5))));
  });

  it('does not count loudness', () => {
    const sound = sweep(true, 0.5);
    const quiet = sound.map((s) => s / 2);
    const other = patternDistance(seen(sound), seen(sweep(false, 0.5)));
    expect(patternDistance(seen(sound), seen(quiet))).toBeLessThan(0.2 * other);
  });
});
