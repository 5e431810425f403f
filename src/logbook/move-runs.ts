/** Moves runs between devices: all of them to one JSON text, and such a text back into the logbook. */

import { z } from 'zod';
import type { KeptRun } from '../bench/ports.ts';
import type { Database, Writing } from './database.ts';
import { asFault, LogbookFault } from './fault.ts';
import { putReadings, readingRows, rowsOf } from './ledger.ts';
import { keptReading, runEntry, runHead, runSource } from './rows.ts';
import { sameData } from './same-data.ts';

const MAX_TEXT = 64 * 1024 * 1024;
const MAX_FAULTS = 20;

const keptRun: z.ZodType<KeptRun> = z
  .strictObject({
    head: runHead,
    source: runSource,
    entries: z.array(runEntry).readonly(),
    readings: z.array(keptReading).readonly(),
  })
  .superRefine(({ head, source, entries }, { addIssue }) => {
    const refuse = (path: PropertyKey[], message: string) =>
      addIssue({ code: 'custom', path, message });
    if (source.key !== head.sourceKey) refuse(['source', 'key'], 'is not the source of this run');
    for (const [place, entry] of entries.entries()) {
      if (entry.runId !== head.id) refuse(['entries', place, 'runId'], 'is of another run');
      if (entry.seq !== place) refuse(['entries', place, 'seq'], `must be ${place}: none missing`);
    }
  });

const file = z
  .strictObject({
    followrest: z.literal('logbook'),
    version: z.literal(1),
    runs: z.array(keptRun),
  })
  .superRefine(({ runs }, { addIssue }) => {
    const ids = runs.map((run) => run.head.id);
    for (const [place, id] of ids.entries()) {
      if (ids.indexOf(id) === place) continue;
      addIssue({ code: 'custom', path: ['runs', place, 'head', 'id'], message: 'comes twice' });
    }
  });

/** What is wrong with a file that was refused: where, from its root, and what. */
export interface ImportFault {
  readonly path: string;
  readonly message: string;
}

export type Imported =
  | { readonly ok: true; readonly added: number; readonly alreadyHere: number }
  /** Nothing was changed. */
  | { readonly ok: false; readonly faults: readonly ImportFault[] };

export interface Exported {
  readonly text: string;
  readonly runs: number;
  /** One fault a run that is damaged and so was left out. */
  readonly left: readonly LogbookFault[];
}

/** Writes runs as one text that `importInto` reads. */
export async function exportFrom(
  ids: readonly string[],
  read: (id: string) => Promise<KeptRun | null>,
): Promise<Exported> {
  const runs: KeptRun[] = [];
  const left: LogbookFault[] = [];
  for (const id of ids) {
    const run = await read(id).catch((error: unknown) => {
      left.push(asFault(error));
      return null;
    });
    if (run !== null) runs.push(run);
  }
  const text = JSON.stringify({ followrest: 'logbook', version: 1, runs }, null, 1);
  return { text, runs: runs.length, left };
}

/** Takes all runs of a text, or none. A run that is here already, the same, is left as it is. */
export async function importInto(db: Database, text: string): Promise<Imported> {
  const read = readFile(text);
  if (!read.ok) return read;
  let faults: readonly ImportFault[] = [];
  try {
    const added = await db.write(['runs', 'entries', 'sources', 'readings'], async (tx) => {
      const outcomes: Outcome[] = [];
      for (const run of read.runs) outcomes.push(await addRun(tx, run));
      faults = outcomes.flatMap((outcome, place) => (outcome === 'clashes' ? clash(place) : []));
      if (faults.length > 0) throw new LogbookFault('taken', 'Some runs clash.');
      return outcomes.filter((outcome) => outcome === 'added').length;
    });
    return { ok: true, added, alreadyHere: read.runs.length - added };
  } catch (error) {
    if (faults.length === 0) throw error;
    return { ok: false, faults };
  }
}

function readFile(
  text: string,
): { ok: true; runs: readonly KeptRun[] } | (Imported & { ok: false }) {
  const refuse = (path: string, message: string) => ({
    ok: false as const,
    faults: [{ path, message }],
  });
  if (text.length > MAX_TEXT) return refuse('', `The file is over ${MAX_TEXT} letters long.`);
  let data: unknown;
  try {
    data = JSON.parse(text);
  } catch (error) {
    return refuse('', `The file is not JSON: ${error instanceof Error ? error.message : error}.`);
  }
  const parsed = file.safeParse(data);
  if (parsed.success) return { ok: true, runs: parsed.data.runs };
  const faults = parsed.error.issues.map(({ path, message }) => ({
    path: path.join('.'),
    message,
  }));
  return { ok: false, faults: faults.slice(0, MAX_FAULTS) };
}

type Outcome = 'added' | 'already here' | 'clashes';

async function addRun(tx: Writing, { head, source, entries, readings }: KeptRun): Promise<Outcome> {
  const kept = await tx.objectStore('sources').get(source.key);
  if (kept !== undefined && !sameData(kept, source)) return 'clashes';
  if ((await tx.objectStore('runs').getKey(head.id)) !== undefined) {
    return (await isHere(tx, { head, source, entries, readings })) ? 'already here' : 'clashes';
  }
  await tx.objectStore('runs').add(head);
  await tx.objectStore('sources').put(source);
  for (const entry of entries) await tx.objectStore('entries').put(entry);
  await putReadings(tx, head.id, readings);
  return 'added';
}

async function isHere(tx: Writing, run: KeptRun): Promise<boolean> {
  const entries = await tx.objectStore('entries').getAll(rowsOf(run.head.id));
  const readings = await tx.objectStore('readings').getAll(rowsOf(run.head.id));
  const head: unknown = await tx.objectStore('runs').get(run.head.id);
  return (
    sameData(head, run.head) &&
    sameData(entries, run.entries) &&
    sameData(readings, readingRows(run.head.id, run.readings))
  );
}

function clash(place: number): ImportFault {
  return {
    path: `runs.${place}`,
    message: 'is here already under the same name, and differs. Nothing was taken from the file.',
  };
}
