/** The logbook of this device, opened: runs, kept values, and the ways in and out as files. */

import type { Ledger, RunHead } from '../bench/ports.ts';
import type { Language } from '../texts/index.ts';
import { openDatabase } from './database.ts';
import { type Exported, exportFrom } from './export-file.ts';
import type { LogbookFault } from './fault.ts';
import { type Imported, importInto, type JudgeKept } from './import-file.ts';
import { type Keep, keepIn } from './keep.ts';
import { ledgerIn } from './ledger.ts';
import { type Photos, photosIn } from './photos.ts';
import { type Newest, runListIn } from './run-list.ts';
import { type Secrets, secretsIn } from './secrets.ts';

export interface Logbook extends Ledger, Keep, Photos {
  /**
   * Heads, the newest first.
   *
   * @param newest is called once with the newest of them when older ones take longer to be read, and not at all otherwise
   */
  list(newest?: Newest): Promise<readonly RunHead[]>;
  readonly secrets: Secrets;
  /** Everything but the secrets as one file; or the runs with these ids alone. */
  exportRuns(ids?: readonly string[]): Promise<Exported>;
  /** Takes a file in whole, or refuses it with reasons, in English or the language given, and changes nothing. */
  importRuns(text: string, judge?: JudgeKept, language?: Language): Promise<Imported>;
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
  const ledger = ledgerIn(db);
  const list = runListIn(db, report);
  await db.read(['kept'], (tx) => tx.objectStore('kept').count());
  return {
    ...ledger,
    list,
    ...keepIn(db, report),
    ...photosIn(db, report),
    secrets: secretsIn(db),
    async exportRuns(ids) {
      const chosen = ids ?? (await list()).map((head) => head.id);
      return exportFrom(db, chosen, ledger.read, ids === undefined);
    },
    importRuns: (text, judge, language) => importInto(db, text, judge, language),
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
