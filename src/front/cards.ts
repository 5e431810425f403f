/** The machine cards there are: those of this shop, kept in the logbook, and those shipped. */

import type { Logbook } from '../logbook/index.ts';
import type { CardEntry } from '../screens/world.ts';
import { readCardEntry, shippedCards } from './texts.ts';

const cardKey = 'card/';

export interface Cards {
  all(): readonly CardEntry[];
  /** Faults, each a sentence; none when it was kept. */
  keep(text: string): Promise<readonly string[]>;
  remove(id: string): Promise<void>;
}

export async function openCards(logbook: Logbook): Promise<Cards> {
  const shipped = shippedCards();
  let own = await ownCards(logbook);
  return {
    all: () => [...own, ...shipped],
    async keep(text) {
      const read = readCardEntry(text, true);
      if (!read.ok) return read.faults;
      if (shipped.some((card) => card.id === read.value.id)) {
        return [
          `"${read.value.id}" is the id of a card that came with Followrest. Give yours another id.`,
        ];
      }
      await logbook.keep(cardKey + read.value.id, text);
      own = await ownCards(logbook);
      return [];
    },
    async remove(id) {
      await logbook.forget(cardKey + id);
      own = await ownCards(logbook);
    },
  };
}

async function ownCards(logbook: Logbook): Promise<readonly CardEntry[]> {
  const texts = await logbook.recallAll(cardKey, (value) => String(value));
  return [...texts.values()].flatMap((text) => {
    const read = readCardEntry(text, true);
    return read.ok ? [read.value] : [];
  });
}
