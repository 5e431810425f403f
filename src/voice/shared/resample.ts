/** Changes the sample rate with a proper low-pass in front, so that nothing folds back. Pure. */

/** Half width of the filter in output samples at the lower of the two rates. */
const HALF_WIDTH = 16;

/**
 * A resampler for one stream: give it pieces in order, it gives the pieces at the new rate.
 * Windowed-sinc interpolation (J. O. Smith, "Digital Audio Resampling Home Page"); cut-off at 0.45
 * of the lower rate. Values keep their scale.
 */
export function resampler(from: number, to: number): (piece: Float32Array) => Float32Array {
  if (from === to) return (piece) => piece;
  const scale = Math.min(1, to / from) * 0.9;
  const reach = Math.ceil(HALF_WIDTH / scale);
  const step = from / to;
  let kept = new Float32Array(reach);
  /** Where the next output lies, counted in input samples from the beginning of `kept`. */
  let at = reach;
  return (piece) => {
    const input = new Float32Array(kept.length + piece.length);
    input.set(kept);
    input.set(piece, kept.length);
    const count = Math.max(0, Math.ceil((input.length - reach - at) / step));
    const output = new Float32Array(count);
    for (let i = 0; i < count; i++, at += step) output[i] = valueAt(input, at, scale, reach);
    const drop = Math.max(0, Math.floor(at) - reach);
    kept = input.slice(drop);
    at -= drop;
    return output;
  };
}

function valueAt(input: Float32Array, at: number, scale: number, reach: number): number {
  const first = Math.max(0, Math.ceil(at - reach));
  const last = Math.min(input.length - 1, Math.floor(at + reach));
  let sum = 0;
  for (let i = first; i <= last; i++) {
    const x = at - i;
    const window = 0.5 + 0.5 * Math.cos((Math.PI * x) / (reach + 1));
    sum += (input[i] ?? 0) * sinc(x * scale) * scale * window;
  }
  return sum;
}

function sinc(x: number): number {
  return x === 0 ? 1 : Math.sin(Math.PI * x) / (Math.PI * x);
}

/** A whole sound at another rate: -32768 to 32767 in and out. */
export function resampleSound(samples: Int16Array, from: number, to: number): Int16Array {
  if (from === to) return samples;
  const padded = new Float32Array(
    samples.length + Math.ceil((2 * HALF_WIDTH * from) / Math.min(from, to)),
  );
  padded.set(samples);
  const out = resampler(from, to)(padded);
  const length = Math.round((samples.length * to) / from);
  return Int16Array.from(out.subarray(0, length), (v) =>
    Math.max(-32_768, Math.min(32_767, Math.round(v))),
  );
}
