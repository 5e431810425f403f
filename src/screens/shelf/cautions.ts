/** Whose cautions are whose, of the machine kinds on the Shelf. Pure. */

import type { ShelfEntry } from '../world.ts';

type Kind = Pick<ShelfEntry, 'machineKind' | 'kindTitle' | 'cautions'>;

interface ShelfCautions {
  /** What more than one kind says. */
  readonly shared: readonly string[];
  readonly own: readonly { readonly title: string; readonly lines: readonly string[] }[];
}

/** Every caution once, in the order of the entries. */
export function cautionsOf(entries: readonly Kind[]): ShelfCautions {
  const kinds = [...new Map(entries.map((entry) => [entry.machineKind, entry])).values()];
  const saidBy = (line: string) => kinds.filter(({ cautions }) => cautions.includes(line)).length;
  const all = kinds.flatMap(({ cautions }) => cautions);
  return {
    shared: [...new Set(all.filter((line) => saidBy(line) > 1))],
    own: kinds.flatMap(({ kindTitle, cautions }) => {
      const lines = cautions.filter((line) => saidBy(line) === 1);
      return lines.length > 0 ? [{ title: kindTitle, lines }] : [];
    }),
  };
}
