/** Where the limits and the reading lie on a tolerance bar. */
import type { Scale } from './scale.ts';
import { linearScale } from './scale.ts';

export interface ToleranceQuestion {
  /** mm */
  readonly lower: number;
  readonly upper: number;
  readonly reading?: number | undefined;
}

export interface TolerancePlaces {
  readonly lower: number;
  readonly upper: number;
  /** Undefined without a reading; kept on the bar when it lies far outside, and `beyond` says so. */
  readonly reading: number | undefined;
  readonly beyond: 'below' | 'above' | undefined;
  readonly scale: Scale;
}

/** The zone takes the middle half of the bar; a quarter is left for sizes outside it at each end. */
export function tolerancePlaces(
  { lower, upper, reading }: ToleranceQuestion,
  start: number,
  end: number,
): TolerancePlaces {
  const quarter = (end - start) / 4;
  const scale = linearScale([lower, upper], [start + quarter, end - quarter]);
  const place = reading === undefined ? undefined : scale(reading);
  const beyond = place === undefined ? undefined : side(place, start, end);
  return {
    lower: scale(lower),
    upper: scale(upper),
    reading: place === undefined ? undefined : Math.min(Math.max(place, start), end),
    beyond,
    scale,
  };
}

function side(place: number, start: number, end: number): 'below' | 'above' | undefined {
  if (place < start) return 'below';
  return place > end ? 'above' : undefined;
}
