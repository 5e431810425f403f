/** Points in time as a person reads them, in the language and the zone of the device. */

/** "25 Nov 2026, 10:41". */
export function whenText(at: number): string {
  return new Intl.DateTimeFormat(undefined, { dateStyle: 'medium', timeStyle: 'short' }).format(at);
}

/** "10:41:07", for lines of one run. */
export function clockText(at: number): string {
  return new Intl.DateTimeFormat(undefined, { timeStyle: 'medium' }).format(at);
}

/** "1 h 12 min", "8 min", "under a minute". */
export function durationText(from: number, to: number): string {
  const minutes = Math.floor((to - from) / 60_000);
  if (minutes < 1) return 'under a minute';
  const hours = Math.floor(minutes / 60);
  return hours === 0 ? `${minutes} min` : `${hours} h ${minutes % 60} min`;
}
