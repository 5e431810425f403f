/** What the microphone and the voice do to all sound alike, learnt from utterance to utterance. Pure. */
import { BANDS, COSINES, cosinesOf, meanOf } from './mel.ts';

/** The model's own idea of an average channel: `-cmninit` of its feat.params. */
const AVERAGE = [
  41.0, -5.29, -0.12, 5.09, 2.48, -4.07, -1.37, -1.78, -5.08, -2.05, -6.45, -1.42, 1.17,
];
/**
 * From the loud frames of an utterance to the whole of it, quiet consonants and short pauses
 * included: mean over five made voices, sixteen phrases each.
 */
const LOUD_TO_WHOLE = [-16.3, -16.1, 1.2, -17.6, 10.7, 2.7, -2.8, 10.6, -0.9, 4.7, -6.2, 0.6, 1.5];
/** The average counts as so many utterances, since one word has few sounds. */
const AVERAGE_COUNTS = 2;
const MOST = 20;
/** Speech in a band is taken to be at least this share of what is heard there. */
const LEAST_SPEECH = 0.1;

export class Channel {
  private sum = new Float64Array(COSINES);
  private count = 0;

  /** `kept` is what `text` gave in an earlier session with the same microphone. */
  constructor(kept?: string) {
    const numbers = (kept ?? '').split(',').map(Number);
    if (numbers.length !== COSINES || numbers.some((n) => !Number.isFinite(n))) return;
    this.sum = Float64Array.from(numbers, (n) => n * AVERAGE_COUNTS);
    this.count = AVERAGE_COUNTS;
  }

  get isKnown(): boolean {
    return this.count > 0;
  }

  /** Takes the band logarithms of the loud frames of an utterance, over this noise. */
  learn(loud: readonly Float64Array[], noise: Float64Array | null): void {
    if (loud.length === 0) return;
    const clean = loud.map((frame) => (noise ? withoutNoise(frame, noise) : frame));
    const whole = cosinesOf(meanOf(clean)).map((value, i) => value + (LOUD_TO_WHOLE[i] ?? 0));
    const fade = this.count >= MOST ? (MOST - 1) / MOST : 1;
    this.sum = this.sum.map((value, i) => value * fade + (whole[i] ?? 0));
    this.count = this.count * fade + 1;
  }

  /** Mean cosines of clean speech here. */
  get mean(): Float64Array {
    const all = this.count + AVERAGE_COUNTS;
    return this.sum.map((value, i) => {
      // Loudness is no matter of average: it is what it is at this microphone.
      if (i === 0 && this.count > 0) return value / this.count;
      return (value + AVERAGE_COUNTS * (AVERAGE[i] ?? 0)) / all;
    });
  }

  get text(): string {
    return [...this.mean].map((value) => value.toFixed(2)).join(',');
  }
}

function withoutNoise(frame: Float64Array, noise: Float64Array): Float64Array {
  return Float64Array.from({ length: BANDS }, (_, j) => {
    const heard = Math.exp(frame[j] ?? 0);
    return Math.log(Math.max(LEAST_SPEECH * heard, heard - Math.exp(noise[j] ?? 0)));
  });
}
