/** The one connection to IndexedDB: opened, shared, dropped and opened again. */

import {
  type DBSchema,
  type IDBPDatabase,
  type IDBPTransaction,
  openDB,
  type StoreNames,
} from 'idb';
import { daysOf } from './days.ts';
import { asFault, isLostConnection, LogbookFault } from './fault.ts';

/** Values are `unknown` on purpose: only a parsed row is a row. */
export interface LogbookSchema extends DBSchema {
  runs: { key: string; value: unknown };
  entries: { key: [string, number]; value: unknown };
  sources: { key: string; value: unknown };
  readings: { key: [string, number]; value: unknown };
  kept: { key: string; value: unknown };
  /** Heads by day: all that a list needs, in few rows. Made from `runs`, and made again when damaged. */
  days: { key: string; value: unknown };
  photos: { key: string; value: unknown; indexes: { run: string } };
  /** What never leaves this device: verifiers of passphrases, the key of the seal. */
  secrets: { key: string; value: unknown };
}

export type StoreName = StoreNames<LogbookSchema>;
type Connection = IDBPDatabase<LogbookSchema>;
export type Reading = IDBPTransaction<LogbookSchema, StoreName[], 'readonly'>;
export type Writing = IDBPTransaction<LogbookSchema, StoreName[], 'readwrite'>;

const NAME = 'followrest';
const VERSION = 2;

export interface Database {
  /** Runs `work` in a reading transaction. It may await nothing but the store. */
  read<T>(stores: StoreName[], work: (tx: Reading) => Promise<T>): Promise<T>;
  /**
   * Runs `work` in a writing transaction with strict durability and resolves only when the data is
   * on disk. When `work` throws, nothing of it is kept. `work` may run twice, so it must bear that.
   */
  write<T>(stores: StoreName[], work: (tx: Writing) => Promise<T>): Promise<T>;
  close(): void;
}

/** Opens the database. `report` hears of trouble that no call can be told about. */
export function openDatabase(report: (fault: LogbookFault) => void): Database {
  let opening: Promise<Connection> | null = null;
  const drop = () => {
    opening = null;
  };
  const connect = () => {
    opening ??= open(report, drop).catch((error) => {
      drop(); // A failed opening is not remembered: the next call tries anew.
      throw error;
    });
    return opening;
  };
  /** Phones drop the connection of a page in the background: open again, and try once more. */
  const withConnection = async <T>(work: (db: Connection) => Promise<T>): Promise<T> => {
    try {
      return await work(await connect());
    } catch (error) {
      if (!isLostConnection(error)) throw asFault(error);
      drop();
      return await work(await connect()).catch((again) => Promise.reject(asFault(again)));
    }
  };
  return {
    read: (stores, work) => withConnection((db) => readIn(db, stores, work)),
    write: (stores, work) => withConnection((db) => writeIn(db, stores, work)),
    close: () => {
      opening?.then((db) => db.close()).catch(() => undefined);
      drop();
    },
  };
}

function open(report: (fault: LogbookFault) => void, drop: () => void): Promise<Connection> {
  if (typeof indexedDB === 'undefined') {
    return Promise.reject(new LogbookFault('failing', (say) => say('noStore')));
  }
  return openDB<LogbookSchema>(NAME, VERSION, {
    upgrade: makeStores,
    blocked: () => report(new LogbookFault('taken', (say) => say('olderTab'))),
    // A newer program wants to upgrade in another tab: give way at once, or it waits for ever.
    blocking: (_current, _wanted, event) => {
      if (event.target instanceof IDBDatabase) event.target.close();
      drop();
      report(new LogbookFault('taken', (say) => say('newerTab')));
    },
    terminated: drop,
  });
}

/** Each version adds to the one before and never changes what it did. */
async function makeStores(
  db: Connection,
  from: number,
  _to: number | null,
  tx: IDBPTransaction<LogbookSchema, StoreName[], 'versionchange'>,
): Promise<void> {
  if (from < 1) makeFirst(db);
  if (from < 2) {
    db.createObjectStore('days', { keyPath: 'day' });
    db.createObjectStore('photos', { keyPath: 'id' }).createIndex('run', 'runId');
    db.createObjectStore('secrets', { keyPath: 'key' });
    for (const day of daysOf(await tx.objectStore('runs').getAll())) {
      await tx.objectStore('days').put(day);
    }
  }
}

function makeFirst(db: Connection): void {
  db.createObjectStore('runs', { keyPath: 'id' });
  db.createObjectStore('entries', { keyPath: ['runId', 'seq'] });
  db.createObjectStore('sources', { keyPath: 'key' });
  db.createObjectStore('readings', { keyPath: ['runId', 'place'] });
  db.createObjectStore('kept', { keyPath: 'key' });
}

async function readIn<T>(db: Connection, stores: StoreName[], work: (tx: Reading) => Promise<T>) {
  const tx = db.transaction(stores, 'readonly');
  const [result] = await Promise.all([work(tx), tx.done]);
  return result;
}

async function writeIn<T>(db: Connection, stores: StoreName[], work: (tx: Writing) => Promise<T>) {
  const tx = db.transaction(stores, 'readwrite', { durability: 'strict' });
  // Watched from the start: a full disk shows only at the commit, as a rejected `done`.
  const committed = tx.done.then(
    () => null,
    (error: unknown) => error,
  );
  try {
    const result = await work(tx);
    const failure = await committed;
    if (failure !== null) throw failure;
    return result;
  } catch (error) {
    abort(tx);
    const failure = await committed;
    // When the browser aborted, the request only says so; the transaction knows why.
    throw isAbort(error) && failure !== null ? failure : error;
  }
}

function abort(tx: Writing): void {
  try {
    tx.abort();
  } catch {
    // It has ended by itself, which is what was wanted.
  }
}

function isAbort(error: unknown): boolean {
  return error instanceof Error && error.name === 'AbortError';
}
