import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  BANDS,
  bandAt,
  bandLogs,
  bandsOf,
  COSINES,
  meanOf,
  middleOf,
} from '../../../src/voice/shared/mel.ts';
import { WARPS, warpedBands, warpedCosines } from '../../../src/voice/shared/vocal-tract.ts';

const RATE = 16_000;

describe('bands at other places', () => {
  it('are counted back from their frequencies', () => {
    for (let band = 0; band < BANDS; band++) expect(bandAt(middleOf(band))).toBeCloseTo(band, 9);
  });

  it('end below half the sampling rate at every warp', () => {
    expect(Math.max(...WARPS) * 6_800).toBeLessThan(RATE / 2);
    expect(WARPS).toContain(1);
  });

  it('show a tone in the band that stands at its frequency', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 6, max: BANDS - 6 }),
        fc.constantFrom(...WARPS),
        (band, warp) => {
          const frequency = warp * middleOf(band);
          const tone = Int16Array.from({ length: RATE / 4 }, (_, i) =>
            Math.round(8_000 * Math.sin((2 * Math.PI * frequency * i) / RATE)),
          );
          const bands = meanOf(bandLogs(tone, warp));
          // Corners stand on whole bins of 31 Hz, so the neighbour may win by a hair.
          expect(Math.abs(bands.indexOf(Math.max(...bands)) - band)).toBeLessThanOrEqual(1);
        },
      ),
      { seed: 11, numRuns: 60 },
    );
  });

  it('are nearly told by the usual bands, where the spectrum is smooth', () => {
    const usual = Float64Array.from({ length: BANDS }, (_, band) => 12 - middleOf(band) / 1_000);
    for (const warp of WARPS) {
      const warped = warpedBands(usual, warp);
      for (let band = 1; band < BANDS - 3; band++) {
        expect(warped[band]).toBeCloseTo(12 - (warp * middleOf(band)) / 1_000, 1);
      }
    }
  });

  it('leave bands and cosines as they are at warp 1', () => {
    const bands = Float64Array.from({ length: BANDS }, (_, band) => band % 5);
    expect(warpedBands(bands, 1)).toEqual(bands);
    const cosines = Float64Array.from({ length: COSINES }, (_, i) => 3 - i);
    expect(warpedCosines(cosines, 1)).toEqual(cosines);
    const there = bandsOf(warpedCosines(cosines, 1.08));
    const expected = warpedBands(bandsOf(cosines), 1.08);
    // Thirteen cosines cannot show all that twenty-five bands do.
    for (let band = 0; band < BANDS; band++) {
      expect(Math.abs((there[band] ?? 0) - (expected[band] ?? 0))).toBeLessThan(0.6);
    }
  });
});
