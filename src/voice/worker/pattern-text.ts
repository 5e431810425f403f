/** A voice pattern as one line of text, to be kept. Pure. */
import { BANDS } from '../shared/mel.ts';
import type { Pattern } from '../shared/pattern.ts';

/** Six steps to one natural logarithm, from -10 on: a byte a band. */
const STEPS = 6;
const LEAST = -10;

/** The pattern as one line of text: the noise first, then each frame, a byte a band, base 64. */
export function patternText({ frames, noise }: Pattern): string {
  const bytes = [noise, ...frames].flatMap((row) => [...row].map(byteOf));
  return btoa(String.fromCharCode(...bytes));
}

function byteOf(value: number): number {
  return Math.max(0, Math.min(255, Math.round((value - LEAST) * STEPS)));
}

/** Longest that is read back: no phrase takes so many hundredths of a second. */
const MOST_FRAMES = 800;

/** The pattern kept as text, or null when the text is none. */
export function patternFrom(text: unknown): Pattern | null {
  const bytes = typeof text === 'string' ? bytesOf(text) : null;
  const rows = bytes ? bytes.length / BANDS : 0;
  if (!bytes || !Number.isInteger(rows) || rows < 11 || rows > MOST_FRAMES) return null;
  const row = (i: number) =>
    Float64Array.from({ length: BANDS }, (_, j) => (bytes[i * BANDS + j] ?? 0) / STEPS + LEAST);
  return { noise: row(0), frames: Array.from({ length: rows - 1 }, (_, i) => row(i + 1)) };
}

function bytesOf(text: string): readonly number[] | null {
  try {
    return [...atob(text)].map((letter) => letter.charCodeAt(0));
  } catch {
    return null;
  }
}
