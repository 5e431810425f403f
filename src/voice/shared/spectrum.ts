/** The Fourier transform. Pure. */

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
