/** The parts of a pictured machine in words. Pure. */

import { type Language, machineTexts, tableIn } from '../../texts/index.ts';

/** A part in words: its name, and one sentence what it is and where. */
export interface PartWords {
  readonly id: string;
  readonly name: string;
  readonly what: string;
}

/** What is written of a part of a machine kind; undefined where the kind has no such part. */
export function partWords(kind: string, id: string, language: Language): PartWords | undefined {
  const table: Readonly<Record<string, string | readonly string[]>> = tableIn(
    language,
    machineTexts,
  );
  const key = `${kind}.${id}`;
  const words = Object.hasOwn(table, key) ? table[key] : undefined;
  if (words === undefined || typeof words === 'string') return undefined;
  const [name = id, what = ''] = words;
  return { id, name, what };
}
