/**
 * The heads of all runs, by the day on which they began, each day as one text. A list or a search of ten thousand runs
 * reads a few hundred such rows and no entry. The store `runs` is the truth; these rows are made from it.
 */

import { z } from 'zod';
import type { RunHead } from '../bench/ports.ts';
import { runHead } from './rows.ts';

export interface DayRow {
  /** "2026-11-25", in UTC, so that it is the same wherever the device is carried. */
  readonly day: string;
  /** A JSON list of heads: a text is read many times faster than as many objects. */
  readonly heads: string;
}

/**
 * A row that stands among the days and is written anew with every change of one. As long as it is the same, so is the
 * list: one short row is read in place of all. Any tab may have changed it, so it is in the store and not in memory.
 * It also holds the newest heads, so that the first rows of the list are on the screen after one reading.
 */
export interface StampRow {
  readonly day: typeof stampKey;
  readonly stamp: string;
  /** A JSON list of heads, the newest first, `NEWEST_RUNS` at most; an older program wrote none. */
  readonly newest?: string;
}

/** Fills the first screen of any device: rows are not less than 64 px high. */
export const NEWEST_RUNS = 30;

/** No day. */
export const stampKey = '';
const stampRow: z.ZodType<StampRow> = z.strictObject({
  day: z.literal(stampKey),
  stamp: z.string().min(1),
  newest: z.string().exactOptional(),
});

/** @param heads of any order, the newest among them */
export function newStamp(heads: readonly RunHead[]): StampRow {
  const newest = JSON.stringify(newestFirst(heads).slice(0, NEWEST_RUNS));
  return { day: stampKey, stamp: crypto.randomUUID(), newest };
}

/** Null when it is no stamp, or a damaged one: then the days are made again. */
export function stampIn(row: unknown): StampRow | null {
  return stampRow.safeParse(row).data ?? null;
}

/** The newest heads that stand beside a stamp; null where none do, or what stands there is damaged. */
export function newestIn(stamp: StampRow | null): readonly RunHead[] | null {
  return stamp?.newest === undefined ? null : headsIn(stamp.newest);
}

export function newestFirst(heads: readonly RunHead[]): readonly RunHead[] {
  return [...heads].sort((one, other) => other.startedAt - one.startedAt);
}

const dayRow: z.ZodType<DayRow> = z.strictObject({ day: z.iso.date(), heads: z.string() });
const headList = z.array(runHead);

export function dayOf({ startedAt }: Pick<RunHead, 'startedAt'>): string {
  return new Date(startedAt).toISOString().slice(0, 10);
}

/** Rows for heads of any order. What does not parse is left out: it is damaged in `runs` too, and told there. */
export function daysOf(rows: readonly unknown[]): readonly DayRow[] {
  const days = new Map<string, RunHead[]>();
  for (const row of rows) {
    const { success, data } = runHead.safeParse(row);
    if (!success) continue;
    const day = dayOf(data);
    days.set(day, [...(days.get(day) ?? []), data]);
  }
  return [...days].map(([day, heads]) => ({ day, heads: JSON.stringify(heads) }));
}

/** The heads of a row; null when it is damaged. */
export function headsOf(row: unknown): readonly RunHead[] | null {
  const { success, data } = dayRow.safeParse(row);
  return success ? headsIn(data.heads) : null;
}

function headsIn(text: string): readonly RunHead[] | null {
  try {
    return headList.parse(JSON.parse(text));
  } catch {
    return null;
  }
}

/** Reads days again and again, and parses each text once. */
export function dayReader(): (rows: readonly unknown[]) => readonly RunHead[] | null {
  const known = new Map<string, { readonly text: string; readonly heads: readonly RunHead[] }>();
  const read = (row: unknown): readonly RunHead[] | null => {
    const { success, data } = dayRow.safeParse(row);
    if (!success) return null;
    const old = known.get(data.day);
    if (old?.text === data.heads) return old.heads;
    const heads = headsOf(row);
    if (heads) known.set(data.day, { text: data.heads, heads });
    return heads;
  };
  return (rows) => {
    const all: RunHead[] = [];
    for (const row of rows) {
      const heads = read(row);
      if (heads === null) return null;
      for (const head of heads) all.push(head);
    }
    return all;
  };
}
