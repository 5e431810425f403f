/** The shop's own materials, kept in the logbook. A run carries them inside the text of its machine card. */

import type { Logbook } from '../logbook/index.ts';
import type { CardEntry, MaterialsDesk } from '../screens/world.ts';
import type { frontTexts, Say } from '../texts/index.ts';
import type { Material } from '../trade/index.ts';

export const materialKey = 'material/';

/** What must hold before the room that knows materials is fetched: it is a row, under its own name. */
export function parseMaterial(value: unknown, name: string): Material {
  const row = value as Material;
  if (typeof value !== 'object' || value === null || row.name !== name) {
    throw new TypeError(name);
  }
  return row;
}

export interface Materials extends MaterialsDesk {
  /** The card with the shop's own materials in its text. */
  onCard(card: CardEntry): Promise<CardEntry>;
  /** Those read before, for one that cannot wait. */
  onCardNow(card: CardEntry): CardEntry;
  /** Reads them anew, after a file was taken in. */
  again(): void;
}

export function openMaterials(
  logbook: Pick<Logbook, 'keep' | 'forget' | 'recallAll'>,
  say: Say<typeof frontTexts>,
  complain: (sentence: string) => void,
): Materials {
  let known: readonly Material[] | undefined;
  const all = async (): Promise<readonly Material[]> => {
    if (known) return known;
    const rows = await logbook.recallAll(materialKey, (value) => value);
    if (rows.size === 0) {
      known = [];
      return known;
    }
    const { readMaterial } = await import('../flow/index.ts');
    known = [...rows].flatMap(([key, value]) => {
      const read = readMaterial(value);
      if (read.ok) return [read.material];
      complain(say('materialLeft', { name: key, faults: read.faults.join(' ') }));
      return [];
    });
    return known;
  };
  return {
    all,
    async keep(row) {
      const { readMaterial } = await import('../flow/index.ts');
      const read = readMaterial(row);
      if (!read.ok) return read.faults;
      await logbook.keep(materialKey + row.name, row);
      known = undefined;
      await all();
      return [];
    },
    async remove(name) {
      await logbook.forget(materialKey + name);
      known = undefined;
      await all();
    },
    onCard: async (card) => withRows(card, await all()),
    onCardNow: (card) => withRows(card, known ?? []),
    again() {
      known = undefined;
    },
  };
}

function withRows(card: CardEntry, rows: readonly Material[]): CardEntry {
  if (rows.length === 0) return card;
  const value = JSON.parse(card.card) as { materials?: readonly Material[] };
  const own = value.materials ?? [];
  const more = rows.filter((row) => !own.some(({ name }) => name === row.name));
  return { ...card, card: JSON.stringify({ ...value, materials: [...own, ...more] }, null, 2) };
}
