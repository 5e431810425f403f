/** Writes a logbook as one file: runs with their texts and photos, and all that is kept beside them but passphrases. */

import type { KeptRun, RunSource } from '../bench/ports.ts';
import { toBase64 } from './base64.ts';
import type { Database } from './database.ts';
import { asFault, type LogbookFault } from './fault.ts';
import { type Photo, photoRow } from './photos.ts';
import { fromStore, keptValue } from './rows.ts';

export interface Exported {
  /** The file, in pieces to be joined: as one string it could be too long for some browsers. */
  readonly parts: readonly string[];
  readonly runs: number;
  /** One fault a row that is damaged and so was left out. */
  readonly left: readonly LogbookFault[];
}

/**
 * @param ids the runs that are wanted
 * @param beside whether cards, operators and settings go along
 */
export async function exportFrom(
  db: Database,
  ids: readonly string[],
  read: (id: string) => Promise<KeptRun | null>,
  beside: boolean,
): Promise<Exported> {
  const left: LogbookFault[] = [];
  const orElse = async <T>(work: () => Promise<T>, other: T): Promise<T> => {
    try {
      return await work();
    } catch (error) {
      left.push(asFault(error));
      return other;
    }
  };
  const sources = new Map<string, RunSource>();
  const runs: string[] = [];
  const photos: string[] = [];
  for (const id of ids) {
    const run = await orElse(() => read(id), null);
    if (!run) continue;
    const { source, ...rest } = run;
    sources.set(source.key, source);
    runs.push(JSON.stringify(rest));
    for (const row of await photoRows(db, id)) {
      const photo = await orElse(async () => fromStore(photoRow, row, (say) => say('photo')), null);
      if (photo) photos.push(JSON.stringify(filed(photo)));
    }
  }
  const kept: string[] = [];
  for (const row of beside ? await keptRows(db) : []) {
    const value = await orElse(async () => fromStore(keptValue, row, (say) => say('value')), null);
    if (value) kept.push(JSON.stringify(value));
  }
  const texts = [...sources.values()].map((source) => JSON.stringify(source));
  const parts = [
    '{"followrest":"logbook","version":2,\n',
    ...listPart('sources', texts, ',\n'),
    ...listPart('runs', runs, ',\n'),
    ...listPart('kept', kept, ',\n'),
    ...listPart('photos', photos, '}\n'),
  ];
  return { parts, runs: runs.length, left };
}

/** One row a line, so that two files can be compared. */
function listPart(name: string, rows: readonly string[], end: string): readonly string[] {
  const lines = rows.map((row, place) => (place === 0 ? `\n${row}` : `,\n${row}`));
  return [`"${name}":[`, ...lines, `]${end}`];
}

function photoRows(db: Database, runId: string): Promise<readonly unknown[]> {
  return db.read(['photos'], (tx) => tx.objectStore('photos').index('run').getAll(runId));
}

function keptRows(db: Database): Promise<readonly unknown[]> {
  return db.read(['kept'], (tx) => tx.objectStore('kept').getAll());
}

function filed({ bytes, ...head }: Photo) {
  return { ...head, data: toBase64(bytes) };
}
