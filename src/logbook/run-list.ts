/** The list of all runs, the newest first: read once, and again only when a tab has changed it. */

import type { RunHead } from '../bench/ports.ts';
import type { Database, Reading } from './database.ts';
import {
  dayReader,
  daysOf,
  headsOf,
  NEWEST_RUNS,
  newestFirst,
  newestIn,
  newStamp,
  stampIn,
  stampKey,
} from './days.ts';
import type { LogbookFault } from './fault.ts';
import { fromStore, runHead, whole } from './rows.ts';

/** Called with the newest runs while the older ones are still being read. */
export type Newest = (heads: readonly RunHead[]) => void;

/** Days of the first reading; each further one takes twice as many, so that few runs a day are soon enough as well. */
const FIRST_DAYS = 8;
/** So many at once do not hold the page up. */
const MOST_DAYS = 64;

/** The list as it was last read, and the stamp that stood beside it then. */
interface Listed {
  readonly readDays: ReturnType<typeof dayReader>;
  stamp: string | null;
  heads: readonly RunHead[];
}

/** @param report hears of a damaged head, which is left out of the list */
export function runListIn(
  db: Database,
  report: (fault: LogbookFault) => void,
): (newest?: Newest) => Promise<readonly RunHead[]> {
  const listed: Listed = { readDays: dayReader(), stamp: null, heads: [] };
  return (newest) => list(db, listed, report, newest);
}

/** The same list again as long as no tab has changed it. */
async function list(
  db: Database,
  listed: Listed,
  report: (fault: LogbookFault) => void,
  newest: Newest | undefined,
): Promise<readonly RunHead[]> {
  const read = await db.read(['days'], async (tx) => {
    const row: unknown = await tx.objectStore('days').get(stampKey);
    const known = stampIn(row);
    const stamp = known?.stamp ?? null;
    if (stamp !== null && stamp === listed.stamp) return { stamp, heads: listed.heads };
    if (row !== undefined && known === null) return { stamp, heads: null };
    const first = newestIn(known);
    const isShown = first?.length === NEWEST_RUNS;
    if (isShown) newest?.(first);
    return { stamp, heads: await fromNewest(tx, listed.readDays, isShown ? undefined : newest) };
  });
  listed.stamp = read.heads && read.stamp;
  listed.heads = read.heads ?? newestFirst(await mendDays(db, report));
  return listed.heads;
}

/** Day by day into the past, in one transaction, so that nothing changes meanwhile; null when a day is damaged. */
async function fromNewest(
  tx: Reading,
  readDays: Listed['readDays'],
  newest: Newest | undefined,
): Promise<readonly RunHead[] | null> {
  const store = tx.objectStore('days');
  const days = (await store.getAllKeys()).filter((day) => day !== stampKey);
  const heads: RunHead[] = [];
  let told = newest === undefined;
  let atOnce = FIRST_DAYS;
  while (days.length > 0) {
    const [first = '', ...later] = days.splice(-atOnce);
    const some = readDays(await store.getAll(IDBKeyRange.bound(first, later.at(-1) ?? first)));
    if (some === null) return null;
    for (const head of newestFirst(some)) heads.push(head);
    atOnce = Math.min(MOST_DAYS, 2 * atOnce);
    if (told || heads.length < NEWEST_RUNS || days.length === 0) continue;
    newest?.([...heads]);
    told = true;
  }
  return newestFirst(heads);
}

/** The rows of the list are damaged: they are made again from the heads themselves. */
async function mendDays(
  db: Database,
  report: (fault: LogbookFault) => void,
): Promise<readonly RunHead[]> {
  const rows = await db.write(['runs', 'days'], async (tx) => {
    const runs: readonly unknown[] = await tx.objectStore('runs').getAll();
    await tx.objectStore('days').clear();
    const days = daysOf(runs);
    for (const day of days) await tx.objectStore('days').put(day);
    await tx.objectStore('days').put(newStamp(days.flatMap((day) => headsOf(day) ?? [])));
    return runs;
  });
  return rows.flatMap((row) =>
    whole(
      () =>
        fromStore(runHead, row, (say) => say('headOf', { run: idIn(row) ?? say('unknownRun') })),
      report,
    ),
  );
}

function idIn(row: unknown): string | undefined {
  return typeof row === 'object' && row !== null && 'id' in row ? String(row.id) : undefined;
}
