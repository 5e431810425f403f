/** Verdicts, endings and sizes in words. */

import type { KeptReading, RunEntry, RunHead } from '../../bench/index.ts';
import { decimalIn, type Language, unitIn } from '../../texts/index.ts';

/** Each as a key of the Logbook's texts. */
export const VERDICTS = {
  within: 'within',
  rework: 'rework',
  lost: 'lost',
} as const satisfies Readonly<Record<NonNullable<KeptReading['verdict']>, string>>;

export const STATUSES = {
  open: 'open',
  finished: 'finished',
  'given-up': 'givenUp',
} as const satisfies Readonly<Record<RunHead['status'], string>>;

export const FROM = {
  speech: 'spoken',
  key: 'key',
  touch: 'touch',
  gauge: 'gauge',
  script: 'page',
} as const satisfies Readonly<Record<RunEntry['heard']['from'], string>>;

export const OUTCOMES = {
  moved: 'taken',
  refused: 'refused',
  asked: 'answered',
  unclear: 'unclear',
  note: 'noted',
} as const satisfies Readonly<Record<RunEntry['outcome'], string>>;

/** A kept number with no more digits than were read: "15.979 mm". Float dust from unit changes goes. */
export function sizeText(
  value: number,
  unit: string,
  language: Language,
  decimals = decimalsNeeded(value),
): string {
  const number = decimalIn(language, value, decimals);
  return unit === '' ? number : `${number} ${unitIn(language, unit)}`;
}

function decimalsNeeded(value: number): number {
  return (String(Number(value.toFixed(4))).split('.')[1] ?? '').length;
}
