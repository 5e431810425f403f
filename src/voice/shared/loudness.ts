/** How loud sound is in the band of speech, ten milliseconds at a time. Pure but for its filter's memory. */

export const FRAME = 160;
export const FRAMES_PER_SECOND = 100;

/** One-pole corners, 16 kHz: about 250 Hz from below (hum) and 3500 Hz from above (hiss). */
const LOW_CUT = Math.exp((-2 * Math.PI * 250) / 16_000);
const HIGH_CUT = Math.exp((-2 * Math.PI * 3500) / 16_000);
const SILENCE = 1;

/** Gives decibels of full scale for each frame of 160 samples (16 kHz, -32768 to 32767), in order. */
export function loudnessMeter(): (frame: Int16Array) => number {
  let lastIn = 0;
  let high = 0;
  let band = 0;
  return (frame) => {
    let energy = SILENCE;
    for (const sample of frame) {
      high = LOW_CUT * (high + sample - lastIn);
      lastIn = sample;
      band = (1 - HIGH_CUT) * high + HIGH_CUT * band;
      energy += band * band;
    }
    return 10 * Math.log10(energy / Math.max(1, frame.length) / (32_768 * 32_768));
  };
}

/** Which frames stand above the limit for more than a click: three of five around each. */
export function loudFrames(decibels: readonly number[], limit: number): readonly boolean[] {
  const above = decibels.map((value) => value > limit);
  return above.map((_, i) => above.slice(Math.max(0, i - 2), i + 3).filter(Boolean).length >= 3);
}

/** A loud stretch shorter than this (frames) is a knock, unless there is nothing longer. */
const KNOCK = 15;

/** The loud frames without knocks, since no word need explain those. */
export function withoutKnocks(loud: readonly boolean[]): readonly boolean[] {
  const kept = loud.map((isLoud, i) => isLoud && stretchAt(loud, i) >= KNOCK);
  return kept.some(Boolean) ? kept : loud;
}

function stretchAt(loud: readonly boolean[], at: number): number {
  let first = at;
  while (first > 0 && loud[first - 1]) first--;
  let last = at;
  while (loud[last + 1]) last++;
  return last - first + 1;
}
