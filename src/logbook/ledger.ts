/** Runs, kept entry by entry: the ledger of the bench over IndexedDB. */

import type { KeptReading, KeptRun, Ledger, RunEntry, RunHead, RunSource } from '../bench/ports.ts';
import type { Database, Reading, Writing } from './database.ts';
import { LogbookFault, type Told } from './fault.ts';
import { putInDays } from './put-in-days.ts';
import {
  fromStore,
  type ReadingRow,
  readingRow,
  runEntry,
  runHead,
  runSource,
  toWrite,
} from './rows.ts';
import { sameData } from './same-data.ts';
import { tallyOf } from './tally.ts';

/** All but the list, which is read in a way of its own. */
export function ledgerIn(db: Database): Omit<Ledger, 'list'> {
  return {
    start: (head, source) => start(db, head, source),
    append: (entry) => append(db, entry),
    finish: (runId, end) => finish(db, runId, end),
    read: (runId) => read(db, runId),
  };
}

async function start(db: Database, head: RunHead, source: RunSource): Promise<void> {
  const headRow = toWrite(runHead, head, (say) => say('head'));
  const sourceRow = toWrite(runSource, source, (say) => say('flowText'));
  if (headRow.sourceKey !== sourceRow.key) {
    throw new LogbookFault('unfit', (say) => say('otherSource'));
  }
  await db.write(['runs', 'sources', 'days'], async (tx) => {
    const runs = tx.objectStore('runs');
    if (isNew(await runs.get(headRow.id), headRow, (say) => say('runOf', { run: headRow.id })))
      await runs.add(headRow);
    // The key is a hash of the text, so putting it again changes nothing, or mends a damaged row.
    await tx.objectStore('sources').put(sourceRow);
    await putInDays(tx, [headRow]);
  });
}

/** Refused unless the run exists and the entry is its next one, or is already there as it is. */
async function append(db: Database, entry: RunEntry): Promise<void> {
  const row = toWrite(runEntry, entry, (say) => say('entry'));
  const what: Told = (say) => say('entryOf', { place: row.seq, run: row.runId });
  await db.write(['runs', 'entries'], async (tx) => {
    const entries = tx.objectStore('entries');
    const before = await (row.seq === 0
      ? tx.objectStore('runs').getKey(row.runId)
      : entries.getKey([row.runId, row.seq - 1]));
    if (before === undefined) {
      throw new LogbookFault('unfit', (say) => say('nothingBefore', { what: what(say) }));
    }
    if (isNew(await entries.get([row.runId, row.seq]), row, what)) await entries.add(row);
  });
}

/**
 * Judges a row that is written once and never changed. The same row again is no fault: after a
 * lost connection nobody knows whether the first try was kept.
 *
 * @param there what stands under its key now, if anything
 * @throws LogbookFault 'taken' when something else stands there
 */
function isNew(there: unknown, row: unknown, what: Told): boolean {
  if (there === undefined) return true;
  if (sameData(there, row)) return false;
  throw new LogbookFault('taken', (say) => say('written', { what: what(say) }));
}

async function finish(
  db: Database,
  runId: string,
  end: Parameters<Ledger['finish']>[1],
): Promise<void> {
  await db.write(['runs', 'entries', 'readings', 'days'], async (tx) => {
    const head = await headOf(tx, runId);
    if (head === null) {
      throw new LogbookFault('unfit', (say) => say('noRunToFinish', { run: runId }));
    }
    const rows = await tx.objectStore('entries').getAll(rowsOf(runId));
    const tally = tallyOf(
      rows.map((row, place) => entryAt(row, place, runId)),
      end.readings,
    );
    const ended = { ...head, status: end.status, endedAt: end.endedAt, tally };
    const row = toWrite(runHead, ended, (say) => say('end'));
    await tx.objectStore('runs').put(row);
    await putInDays(tx, [row]);
    await putReadings(tx, runId, end.readings);
  });
}

/** Replaces the readings of a run. */
export async function putReadings(tx: Writing, runId: string, readings: readonly KeptReading[]) {
  const store = tx.objectStore('readings');
  await store.delete(rowsOf(runId));
  for (const row of readingRows(runId, readings)) await store.put(row);
}

export function readingRows(runId: string, readings: readonly KeptReading[]) {
  return readings.map((reading, place) =>
    toWrite(readingRow, { runId, place, reading }, (say) =>
      say('reading', { label: reading.label }),
    ),
  );
}

/** A run with a damaged or missing row is not given at all: replayed, it would be another run. */
async function read(db: Database, runId: string): Promise<KeptRun | null> {
  return db.read(['runs', 'entries', 'sources', 'readings'], async (tx) => {
    const head = await headOf(tx, runId);
    if (head === null) return null;
    const source = await tx.objectStore('sources').get(head.sourceKey);
    const entries = await tx.objectStore('entries').getAll(rowsOf(runId));
    const readings = await tx.objectStore('readings').getAll(rowsOf(runId));
    return {
      head,
      source: fromStore(runSource, source, (say) => say('flowTextOf', { run: runId })),
      entries: entries.map((row, place) => entryAt(row, place, runId)),
      readings: readings.map((row, place) => readingAt(row, place, runId).reading),
    };
  });
}

async function headOf(tx: Reading | Writing, runId: string): Promise<RunHead | null> {
  const row = await tx.objectStore('runs').get(runId);
  return row === undefined ? null : fromStore(runHead, row, (say) => say('headOf', { run: runId }));
}

function entryAt(row: unknown, place: number, runId: string): RunEntry {
  const what: Told = (say) => say('entryOf', { place, run: runId });
  const entry = fromStore(runEntry, row, what);
  if (entry.seq === place) return entry;
  throw new LogbookFault('damaged', (say) => say('missingEntry', { what: what(say) }));
}

function readingAt(row: unknown, place: number, runId: string): ReadingRow {
  return fromStore(readingRow, row, (say) => say('readingOf', { place, run: runId }));
}

/** All keys [runId, n]: an array is greater than every number. */
export function rowsOf(runId: string): IDBKeyRange {
  return IDBKeyRange.bound([runId, 0], [runId, []]);
}
