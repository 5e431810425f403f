/** The machine cards there are: those of this shop, kept in the logbook, and those shipped. */

import type { Logbook } from '../logbook/index.ts';
import type { CardEntry } from '../screens/world.ts';
import { frontTexts, type Language, sayIn } from '../texts/index.ts';
import { cardEntry, readCardEntry, shippedCards } from './texts.ts';

const cardKey = 'card/';

export interface Cards {
  all(): readonly CardEntry[];
  /** Faults, each a sentence; none when it was kept. */
  keep(text: string): Promise<readonly string[]>;
  remove(id: string): Promise<void>;
  /** Reads them again, as after a file was taken in. */
  again(): Promise<void>;
}

export async function openCards(logbook: Logbook, language: Language): Promise<Cards> {
  const say = sayIn(language, frontTexts);
  const shipped = await shippedCards(language);
  let own = await ownCards(logbook);
  return {
    all: () => [...own, ...shipped],
    async keep(text) {
      const read = await readCardEntry(text, true, language);
      if (!read.ok) return read.faults;
      if (shipped.some((card) => card.id === read.value.id)) {
        return [say('cardTaken', { id: read.value.id })];
      }
      await logbook.keep(cardKey + read.value.id, text);
      own = await ownCards(logbook);
      return [];
    },
    async remove(id) {
      await logbook.forget(cardKey + id);
      own = await ownCards(logbook);
    },
    async again() {
      own = await ownCards(logbook);
    },
  };
}

/** Each was read whole before it was kept; one that is damaged since is reported by the logbook and left out. */
async function ownCards(logbook: Logbook): Promise<readonly CardEntry[]> {
  const entries = await logbook.recallAll(cardKey, (value) => cardEntry(String(value), true));
  return [...entries.values()];
}
