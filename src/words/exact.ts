/** Whole-number fractions, so that a number said is kept as it was said and never as a float. */

/** A fraction in lowest terms; the denominator is above zero. */
export interface Exact {
  readonly top: bigint;
  readonly bottom: bigint;
}

/** Decimals beyond this are not counted when a double is turned into the decimal it shows. */
const MOST_DECIMALS = 12;

function greatestCommon(a: bigint, b: bigint): bigint {
  let [x, y] = [a < 0n ? -a : a, b];
  while (y !== 0n) [x, y] = [y, x % y];
  return x;
}

/** The fraction top/bottom in lowest terms; `bottom` must be above zero. */
export function exact(top: bigint | number, bottom: bigint | number = 1n): Exact {
  const [t, b] = [BigInt(top), BigInt(bottom)];
  const common = greatestCommon(t, b);
  return common > 1n ? { top: t / common, bottom: b / common } : { top: t, bottom: b };
}

export const ONE = exact(1);

export function plus(a: Exact, b: Exact): Exact {
  return exact(a.top * b.bottom + b.top * a.bottom, a.bottom * b.bottom);
}

export function times(a: Exact, b: Exact): Exact {
  return exact(a.top * b.top, a.bottom * b.bottom);
}

/** a ÷ b; b must be above zero. */
export function over(a: Exact, b: Exact): Exact {
  return exact(a.top * b.bottom, a.bottom * b.top);
}

/** Below zero when a < b, zero when equal, above zero when a > b. */
export function compare(a: Exact, b: Exact): number {
  const [left, right] = [a.top * b.bottom, b.top * a.bottom];
  return left < right ? -1 : left > right ? 1 : 0;
}

/** The double nearest to the fraction: one correctly rounded division where both parts are safe integers. */
export function toNumber(a: Exact): number {
  return Number(a.top) / Number(a.bottom);
}

/** "24.95" → 2495/100. Takes plain digits with at most one point and a leading minus; null otherwise. */
export function fromDecimalText(text: string): Exact | null {
  const parts = /^(-?)(\d*)(?:\.(\d*))?$/.exec(text);
  const [whole, part] = [parts?.[2] ?? '', parts?.[3] ?? ''];
  if (whole + part === '') return null;
  const size = exact(BigInt(whole + part), 10n ** BigInt(part.length));
  return parts?.[1] === '-' ? exact(-size.top, size.bottom) : size;
}

/**
 * The decimal a double shows: 24.945 becomes 24945/1000 although the double lies beside it.
 * Null for NaN and the infinities.
 */
export function fromNumber(value: number): Exact | null {
  if (!Number.isFinite(value)) return null;
  if (Number.isInteger(value)) return exact(BigInt(value));
  const shown = String(value);
  return fromDecimalText(/e/.test(shown) ? value.toFixed(MOST_DECIMALS) : shown);
}

/** Digits after the point that write the fraction out in full, or null when they never end (1/3). */
export function decimalsOf(a: Exact): number | null {
  let bottom = a.bottom;
  let [twos, fives] = [0, 0];
  for (; bottom % 2n === 0n; bottom /= 2n) twos++;
  for (; bottom % 5n === 0n; bottom /= 5n) fives++;
  return bottom === 1n ? Math.max(twos, fives) : null;
}

/**
 * The fraction as decimal text with a fixed number of digits after the point, "-" first when below zero.
 * An exact half goes to the even digit: 0.125 with two decimals is 0.12, 0.135 is 0.14. Never "-0".
 */
export function toDecimalText(a: Exact, decimals: number): string {
  const size = a.top < 0n ? -a.top : a.top;
  const scaled = size * 10n ** BigInt(decimals);
  const floor = scaled / a.bottom;
  const rest = 2n * (scaled % a.bottom);
  const up = rest > a.bottom || (rest === a.bottom && floor % 2n === 1n);
  const rounded = up ? floor + 1n : floor;
  const digits = rounded.toString().padStart(decimals + 1, '0');
  const whole = digits.slice(0, digits.length - decimals);
  const text = decimals === 0 ? whole : `${whole}.${digits.slice(-decimals)}`;
  return a.top < 0n && rounded !== 0n ? `-${text}` : text;
}
