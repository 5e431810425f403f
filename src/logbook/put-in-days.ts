/** Keeps the days in step with the heads, in the transaction that changes a head. */

import type { RunHead } from '../bench/ports.ts';
import type { Writing } from './database.ts';
import { type DayRow, dayOf, daysOf, headsOf, newStamp } from './days.ts';

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
  if (changed.length > 0) await store.put(newStamp());
}

async function madeAgain(tx: Writing, day: string): Promise<DayRow> {
  const days = daysOf(await tx.objectStore('runs').getAll());
  return days.find((one) => one.day === day) ?? { day, heads: '[]' };
}
