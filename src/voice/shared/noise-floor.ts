/** Gives sound a floor of noise: digital silence is no sound a model knows. Pure; same sound, same noise. */

/** Decibels below the loudest hundredth of a second. */
const FLOOR = -45;
const HUNDREDTH = 160;

/** The sound with its floor; 16 kHz. */
export function withFloor(samples: Int16Array): Int16Array {
  const size = loudestPart(samples) * 10 ** (FLOOR / 20) * Math.sqrt(12);
  let seed = 1;
  return samples.map((sample) => {
    seed = (Math.imul(seed, 1_664_525) + 1_013_904_223) >>> 0;
    const noisy = sample + size * (seed / 2 ** 32 - 0.5);
    return Math.max(-32_768, Math.min(32_767, Math.round(noisy)));
  });
}

function loudestPart(samples: Int16Array): number {
  let loudest = 0;
  for (let at = 0; at + HUNDREDTH <= samples.length; at += HUNDREDTH) {
    const energy = samples.subarray(at, at + HUNDREDTH).reduce((sum, s) => sum + s * s, 0);
    loudest = Math.max(loudest, energy);
  }
  return Math.sqrt(loudest / HUNDREDTH);
}
