/** The logbook of this device, opened: runs, kept values, and the ways in and out as files. */

import type { Ledger } from '../bench/ports.ts';
import { openDatabase } from './database.ts';
import type { LogbookFault } from './fault.ts';
import { type Keep, keepIn } from './keep.ts';
import { ledgerIn } from './ledger.ts';
import { type Exported, exportFrom, type Imported, importInto } from './move-runs.ts';

export interface Logbook extends Ledger, Keep {
  /** All runs, or those with these ids, as one JSON text. */
  exportRuns(ids?: readonly string[]): Promise<Exported>;
  importRuns(text: string): Promise<Imported>;
  close(): void;
}

/**
 * Opens the logbook.
 *
 * @param report hears of damaged rows that were left out, and of another tab in the way; every
 *   other trouble rejects the call it belongs to, with a LogbookFault
 * @throws LogbookFault 'failing' when this browser keeps nothing
 */
export async function openLogbook(report: (fault: LogbookFault) => void): Promise<Logbook> {
  const db = openDatabase(report);
  const ledger = ledgerIn(db, report);
  await db.read(['runs'], (tx) => tx.objectStore('runs').count());
  return {
    ...ledger,
    ...keepIn(db, report),
    async exportRuns(ids) {
      const chosen = ids ?? (await ledger.list()).map((head) => head.id);
      return exportFrom(chosen, ledger.read);
    },
    importRuns: (text) => importInto(db, text),
    close: () => db.close(),
  };
}

/**
 * Asks the browser not to clear the logbook when the device runs short of room. Ask after the
 * first real work: browsers judge by how much a page is used, and some ask the person.
 */
export async function askForPermanence(): Promise<'granted' | 'not granted' | 'unknown'> {
  const storage: StorageManager | undefined = globalThis.navigator?.storage;
  if (storage?.persist === undefined) return 'unknown';
  return (await storage.persist()) ? 'granted' : 'not granted';
}
