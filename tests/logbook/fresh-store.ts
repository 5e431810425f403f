/** An empty IndexedDB for one test, and ways to look at and damage what is in it. */

import 'fake-indexeddb/auto';
import { IDBFactory } from 'fake-indexeddb';
import { openDB } from 'idb';
import type { LogbookFault } from '../../src/logbook/index.ts';
import { openLogbook } from '../../src/logbook/index.ts';

/** Opens a logbook in a new, empty store; `faults` fills with what it reports. */
export async function freshLogbook() {
  globalThis.indexedDB = new IDBFactory();
  const faults: LogbookFault[] = [];
  const logbook = await openLogbook((fault) => faults.push(fault));
  return { logbook, faults };
}

/** Puts a row of any shape into a store, past the logbook. */
export async function putRaw(store: string, row: unknown): Promise<void> {
  const db = await openDB('followrest');
  await db.put(store, row);
  db.close();
}

/** Everything in the database, by store. */
export async function allRows(): Promise<Record<string, readonly unknown[]>> {
  const db = await openDB('followrest');
  const names = [...db.objectStoreNames];
  const rows = await Promise.all(names.map((name) => db.getAll(name)));
  db.close();
  return Object.fromEntries(names.map((name, place) => [name, rows[place] ?? []]));
}
