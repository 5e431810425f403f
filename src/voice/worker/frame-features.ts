/** What the model sees of sound: thirteen cosines a hundredth of a second, their slopes and curvatures. Pure. */
import { bandLogs, COSINES, cosinesOf } from '../shared/mel.ts';
import { STREAMS } from './speech-model.ts';

export const FEATURES = STREAMS * COSINES;

/** A row of 39 a frame (`1s_c_d_dd` of the engine's feat.c, edges repeated); 16 kHz, bands at `warp` times their place. */
export function frameFeatures(samples: Int16Array, warp = 1): readonly Float32Array[] {
  const rows = bandLogs(samples, warp).map(cosinesOf);
  const last = rows.length - 1;
  const at = (frame: number, i: number) => rows[Math.max(0, Math.min(last, frame))]?.[i] ?? 0;
  return rows.map((row, t) => {
    const features = new Float32Array(FEATURES);
    for (let i = 0; i < COSINES; i++) {
      features[i] = row[i] ?? 0;
      features[COSINES + i] = at(t + 2, i) - at(t - 2, i);
      features[2 * COSINES + i] = at(t + 3, i) - at(t - 1, i) - at(t + 1, i) + at(t - 3, i);
    }
    return features;
  });
}
