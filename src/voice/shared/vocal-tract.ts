/**
 * The length of a person's vocal tract moves all that resonates in it: with a shorter one every formant lies higher.
 * The bands are put where this person's formants are, at `warp` times their frequencies, so that the model hears the
 * voice it knows. Method: vocal tract length normalisation, Lee and Rose, IEEE Trans. Speech and Audio 6 (1998). Pure.
 */
import { BANDS, bandAt, bandsOf, cosinesOf, middleOf } from './mel.ts';

/** From a long tract to a short one, as in Lee and Rose; with the highest the bands still end below 8 kHz. */
export const WARPS: readonly number[] = [0.88, 0.92, 0.96, 1, 1.04, 1.08, 1.12, 1.15];

/** What was measured in the usual bands, as the bands at `warp` times their frequencies have it. */
export function warpedBands(bands: Float64Array, warp: number): Float64Array {
  if (warp === 1) return bands;
  return Float64Array.from({ length: BANDS }, (_, band) => {
    const place = Math.max(0, Math.min(BANDS - 1, bandAt(warp * middleOf(band))));
    const below = Math.min(BANDS - 2, Math.floor(place));
    const part = place - below;
    return (bands[below] ?? 0) * (1 - part) + (bands[below + 1] ?? 0) * part;
  });
}

/** The same for cosines. */
export function warpedCosines(cosines: Float64Array, warp: number): Float64Array {
  return warp === 1 ? cosines : cosinesOf(warpedBands(bandsOf(cosines), warp));
}
