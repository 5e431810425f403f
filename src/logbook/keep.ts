/** Values under a key, for what is not a run: machine cards, operators, settings. */

import type { Database } from './database.ts';
import { LogbookFault } from './fault.ts';
import { fromStore, keptValue, toWrite, whole } from './rows.ts';

/** Turns what was kept into its type; throws when it is not of that type, as zod's `parse` does. */
export type Parse<T> = (value: unknown) => T;

export interface Keep {
  /** Keeps plain data under a key such as "card/yard-lathe", in place of what was there. */
  keep(key: string, value: unknown): Promise<void>;
  /** What is kept under the key; null when nothing is, or when it does not parse, which is reported. */
  recall<T>(key: string, parse: Parse<T>): Promise<T | null>;
  /** All that parses under keys with this beginning, by key in order. */
  recallAll<T>(beginning: string, parse: Parse<T>): Promise<ReadonlyMap<string, T>>;
  forget(key: string): Promise<void>;
}

/** Greater than any key's next letter. */
const LAST_LETTER = '\uffff';

export function keepIn(db: Database, report: (fault: LogbookFault) => void): Keep {
  const keysFrom = (beginning: string) =>
    IDBKeyRange.bound(beginning, beginning + LAST_LETTER, false, true);
  const recallAll = async <T>(range: IDBKeyRange, parse: Parse<T>) => {
    const rows = await db.read(['kept'], (tx) => tx.objectStore('kept').getAll(range));
    return new Map(rows.flatMap((row) => whole(() => valueIn(row, parse), report)));
  };
  return {
    async keep(key, value) {
      const row = toWrite(keptValue, { key, value }, (say) => say('named', { name: key }));
      await db.write(['kept'], (tx) => tx.objectStore('kept').put(row));
    },
    async recall(key, parse) {
      return (await recallAll(IDBKeyRange.only(key), parse)).get(key) ?? null;
    },
    recallAll: (beginning, parse) => recallAll(keysFrom(beginning), parse),
    async forget(key) {
      await db.write(['kept'], (tx) => tx.objectStore('kept').delete(key));
    },
  };
}

function valueIn<T>(row: unknown, parse: Parse<T>): readonly [string, T] {
  const { key, value } = fromStore(keptValue, row, (say) => say('value'));
  try {
    return [key, parse(value)];
  } catch (cause) {
    throw new LogbookFault('damaged', (say) => say('damagedValue', { key }), cause);
  }
}
