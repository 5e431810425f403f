/** Verdicts and endings in words. */

import type { KeptReading, RunHead } from '../../bench/index.ts';

export const VERDICTS: Readonly<Record<NonNullable<KeptReading['verdict']>, string>> = {
  within: 'Within',
  rework: 'Can be reworked',
  lost: 'Lost',
};

export const STATUSES: Readonly<Record<RunHead['status'], string>> = {
  open: 'Not finished',
  finished: 'Finished',
  'given-up': 'Given up',
};

/** A kept number with no more digits than were read: "15.979 mm". Float dust from unit changes goes. */
export function sizeText(value: number, unit: string, decimals?: number): string {
  const number =
    decimals === undefined ? String(Number(value.toFixed(4))) : value.toFixed(decimals);
  return unit === '' ? number : `${number} ${unit}`;
}
