/** Keeps the days in step with the heads, in the transaction that changes a head. */

import type { RunHead } from '../bench/ports.ts';
import type { Writing } from './database.ts';
import {
  type DayRow,
  dayOf,
  daysOf,
  headsOf,
  NEWEST_RUNS,
  newestIn,
  newStamp,
  stampIn,
  stampKey,
} from './days.ts';

/** Puts new or changed heads into their days. `runs` must have them already: a damaged day is made from it. */
export async function putInDays(tx: Writing, changed: readonly RunHead[]): Promise<void> {
  const store = tx.objectStore('days');
  for (const day of new Set(changed.map(dayOf))) {
    const row: unknown = await store.get(day);
    const old = row === undefined ? [] : headsOf(row);
    const here = changed.filter((head) => dayOf(head) === day);
    const ids = new Set(here.map(({ id }) => id));
    const heads = old && [...old.filter(({ id }) => !ids.has(id)), ...here];
    await store.put(heads ? { day, heads: JSON.stringify(heads) } : await madeAgain(tx, day));
  }
  if (changed.length > 0) await store.put(newStamp(await newestWith(tx, changed)));
}

/** The newest heads when these have changed. Runs stay and keep their time, so no older one can move up. */
async function newestWith(tx: Writing, changed: readonly RunHead[]): Promise<readonly RunHead[]> {
  const row: unknown = await tx.objectStore('days').get(stampKey);
  const old = newestIn(stampIn(row)) ?? (await newestInDays(tx));
  const ids = new Set(changed.map(({ id }) => id));
  return [...old.filter(({ id }) => !ids.has(id)), ...changed];
}

/** Where no row has them yet. */
async function newestInDays(tx: Writing): Promise<readonly RunHead[]> {
  const store = tx.objectStore('days');
  const days = (await store.getAllKeys()).filter((day) => day !== stampKey);
  const found: RunHead[] = [];
  for (const day of days.reverse()) {
    const row: unknown = await store.get(day);
    found.push(...(headsOf(row) ?? headsOf(await madeAgain(tx, day)) ?? []));
    if (found.length >= NEWEST_RUNS) break;
  }
  return found;
}

async function madeAgain(tx: Writing, day: string): Promise<DayRow> {
  const days = daysOf(await tx.objectStore('runs').getAll());
  return days.find((one) => one.day === day) ?? { day, heads: '[]' };
}
