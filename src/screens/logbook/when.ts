/** Points in time as a person reads them, in the language of what is seen and the zone of the device. */

import type { Language, logbookTexts, Say } from '../../texts/index.ts';

/** "25 Nov 2026, 10:41". */
export function whenText(at: number, language: Language): string {
  return dateFormat(language, { dateStyle: 'medium', timeStyle: 'short' }).format(at);
}

/** "10:41:07", for lines of one run. */
export function clockText(at: number, language: Language): string {
  return dateFormat(language, { timeStyle: 'medium' }).format(at);
}

/** A form is dear to make, and a list has a row for every run. */
const made = new Map<string, Intl.DateTimeFormat>();

/** The device's own forms where it is of that language: a day before a month in one country is behind it in another. */
export function dateFormat(
  { code, locale }: Language,
  how: Intl.DateTimeFormatOptions,
): Intl.DateTimeFormat {
  const key = JSON.stringify([code, how]);
  const old = made.get(key);
  if (old) return old;
  const device = new Intl.DateTimeFormat().resolvedOptions().locale;
  const format = new Intl.DateTimeFormat(device.split('-')[0] === code ? device : locale, how);
  made.set(key, format);
  return format;
}

/** "1 h 12 min", "8 min", "under a minute". */
export function durationText(from: number, to: number, say: Say<typeof logbookTexts>): string {
  const minutes = Math.floor((to - from) / 60_000);
  if (minutes < 1) return say('underAMinute');
  const hours = Math.floor(minutes / 60);
  return hours === 0 ? say('minutes', { minutes }) : say('hours', { hours, minutes: minutes % 60 });
}
