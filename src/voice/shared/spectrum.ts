/** The shape of sound over time, as twelve numbers each ten milliseconds (mel-frequency cepstra). Pure. */

const RATE = 16_000;
const HOP = 160;
const WINDOW = 400;
const FFT = 512;
const BANDS = 26;
const KEPT = 12;
const LOWEST = 200;
const HIGHEST = 6_000;

/**
 * Cepstra 1 to 12 of each frame, mean taken away over the utterance, so that neither loudness nor
 * the microphone's colour counts. Method: Davis and Mermelstein, IEEE Trans. ASSP 28(4), 1980.
 */
export function cepstra(samples: Int16Array): readonly Float64Array[] {
  const frames: Float64Array[] = [];
  for (let at = 0; at + WINDOW <= samples.length; at += HOP) {
    frames.push(cosines(bandLogs(power(samples, at))));
  }
  return withoutMean(frames);
}

const hamming = Float64Array.from(
  { length: WINDOW },
  (_, i) => 0.54 - 0.46 * Math.cos((2 * Math.PI * i) / (WINDOW - 1)),
);

function power(samples: Int16Array, at: number): Float64Array {
  const re = new Float64Array(FFT);
  const im = new Float64Array(FFT);
  for (let i = 0; i < WINDOW; i++) {
    const now = samples[at + i] ?? 0;
    const before = samples[at + i - 1] ?? 0;
    re[i] = (now - 0.97 * before) * (hamming[i] ?? 0);
  }
  transform(re, im);
  return re.subarray(0, FFT / 2 + 1).map((r, k) => r * r + (im[k] ?? 0) ** 2);
}

/** Fourier transform in place, radix two. */
export function transform(re: Float64Array, im: Float64Array): void {
  const n = re.length;
  for (let i = 1, j = 0; i < n; i++) {
    let bit = n >> 1;
    for (; j & bit; bit >>= 1) j ^= bit;
    j ^= bit;
    if (i < j) {
      swap(re, i, j);
      swap(im, i, j);
    }
  }
  for (let size = 2; size <= n; size <<= 1) {
    for (let k = 0; k < size / 2; k++) {
      const angle = (-2 * Math.PI * k) / size;
      butterflies(re, im, size, k, Math.cos(angle), Math.sin(angle));
    }
  }
}

function butterflies(
  re: Float64Array,
  im: Float64Array,
  size: number,
  k: number,
  cos: number,
  sin: number,
): void {
  for (let low = k; low < re.length; low += size) {
    const high = low + size / 2;
    const r = (re[high] ?? 0) * cos - (im[high] ?? 0) * sin;
    const i = (re[high] ?? 0) * sin + (im[high] ?? 0) * cos;
    re[high] = (re[low] ?? 0) - r;
    im[high] = (im[low] ?? 0) - i;
    re[low] = (re[low] ?? 0) + r;
    im[low] = (im[low] ?? 0) + i;
  }
}

function swap(values: Float64Array, i: number, j: number): void {
  const kept = values[i] ?? 0;
  values[i] = values[j] ?? 0;
  values[j] = kept;
}

const mel = (hertz: number) => 2595 * Math.log10(1 + hertz / 700);
const hertz = (m: number) => 700 * (10 ** (m / 2595) - 1);

/** Each band's weights over the bins of the transform: triangles, evenly spread over the mel scale. */
const bands: readonly Float64Array[] = Array.from({ length: BANDS }, (_, band) => {
  const step = (mel(HIGHEST) - mel(LOWEST)) / (BANDS + 1);
  const edge = (i: number) => (hertz(mel(LOWEST) + i * step) * FFT) / RATE;
  const [low, middle, high] = [edge(band), edge(band + 1), edge(band + 2)];
  return Float64Array.from({ length: FFT / 2 + 1 }, (_unused, bin) =>
    Math.max(0, Math.min((bin - low) / (middle - low), (high - bin) / (high - middle))),
  );
});

function bandLogs(bins: Float64Array): Float64Array {
  return Float64Array.from(bands, (weights) => {
    let energy = 1;
    for (let bin = 0; bin < bins.length; bin++) energy += (weights[bin] ?? 0) * (bins[bin] ?? 0);
    return Math.log(energy);
  });
}

function cosines(logs: Float64Array): Float64Array {
  return Float64Array.from({ length: KEPT }, (_, i) => {
    let sum = 0;
    for (let band = 0; band < BANDS; band++) {
      sum += (logs[band] ?? 0) * Math.cos((Math.PI * (i + 1) * (band + 0.5)) / BANDS);
    }
    return sum;
  });
}

function withoutMean(frames: readonly Float64Array[]): readonly Float64Array[] {
  const mean = new Float64Array(KEPT);
  for (const frame of frames) {
    for (let i = 0; i < KEPT; i++) mean[i] = (mean[i] ?? 0) + (frame[i] ?? 0);
  }
  return frames.map((frame) => frame.map((value, i) => value - (mean[i] ?? 0) / frames.length));
}

/** How unlike two sounds are when one is stretched to fit the other: mean distance along the best way. */
export function distance(a: readonly Float64Array[], b: readonly Float64Array[]): number {
  if (a.length === 0 || b.length === 0) return Number.POSITIVE_INFINITY;
  if (a.length > 2.5 * b.length || b.length > 2.5 * a.length) return Number.POSITIVE_INFINITY;
  let above = new Float64Array(b.length).fill(Number.POSITIVE_INFINITY);
  for (const [i, frame] of a.entries()) {
    const row = new Float64Array(b.length);
    for (const [j, other] of b.entries()) {
      const left = j > 0 ? (row[j - 1] ?? 0) : Number.POSITIVE_INFINITY;
      const up = above[j] ?? 0;
      const diagonal = j > 0 ? (above[j - 1] ?? 0) : Number.POSITIVE_INFINITY;
      const best = i === 0 && j === 0 ? 0 : Math.min(left, up, diagonal);
      row[j] = best + between(frame, other);
    }
    above = row;
  }
  return (above[b.length - 1] ?? 0) / (a.length + b.length);
}

function between(a: Float64Array, b: Float64Array): number {
  let sum = 0;
  for (let i = 0; i < KEPT; i++) sum += ((a[i] ?? 0) - (b[i] ?? 0)) ** 2;
  return Math.sqrt(sum);
}
