/// <reference types="vite/client" />
/**
 * The flows, machine kinds and machine cards that are shipped with the page, as their texts. They were read and proved
 * by the tests, so the Shelf takes only their heads, and the room that reads flows is fetched when one is begun.
 */

import type { CardEntry, ShelfEntry } from '../screens/world.ts';
import type { Language } from '../texts/index.ts';

const flowTexts = raw(import.meta.glob('../../flows/*.json', { query: '?raw', eager: true }));
const kindTexts = raw(import.meta.glob('../../flows/kinds/*.json', { query: '?raw', eager: true }));
const cardTexts = raw(
  import.meta.glob('../../flows/machines/*.json', { query: '?raw', eager: true }),
);

function raw(modules: Record<string, unknown>): readonly string[] {
  return Object.values(modules).map((module) => (module as { default: string }).default);
}

type CardHead = Pick<CardEntry, 'id' | 'title' | 'machineKind'>;
type KindHead = { readonly id: string; readonly title: string; readonly cautions: string[] };
type FlowHead = Pick<ShelfEntry, 'id' | 'title' | 'about' | 'machineKind' | 'revision'> & {
  readonly steps: readonly unknown[];
};

/** The cards in a language. English needs nothing fetched. */
export async function shippedCards(language: Language): Promise<readonly CardEntry[]> {
  const cards = await Promise.all(
    cardTexts.map(async (card) => {
      const entry = cardEntry(card, false);
      if (!language.spoken) return entry;
      return cardEntry(await inLanguage(entry.id, card, language), false);
    }),
  );
  // As the Shelf has the machine kinds. The file names put inch before metric, the card most begin with.
  const kinds = shippedFlows().map(({ machineKind }) => machineKind);
  const place = ({ machineKind }: CardEntry) => kinds.indexOf(machineKind);
  return cards.reverse().sort((a, b) => place(a) - place(b));
}

/** A card's text that has been read before, as an entry. Throws when it is no JSON. */
export function cardEntry(card: string, own: boolean): CardEntry {
  const { id, title, machineKind } = JSON.parse(card) as CardHead;
  return { id, title, machineKind, own, card };
}

export type CardReading =
  | { readonly ok: true; readonly value: CardEntry }
  | { readonly ok: false; readonly faults: readonly string[] };

/** A machine card's text as an entry, or its faults with line and column. */
export async function readCardEntry(
  card: string,
  own: boolean,
  language: Language,
): Promise<CardReading> {
  const { faultTextIn, readCard } = await import('../flow/index.ts');
  const read = readCard('card', card, language);
  if (!read.ok) return { ok: false, faults: read.faults.map(faultTextIn(language)) };
  const { id, title, machineKind } = read.value;
  return { ok: true, value: { id, title, machineKind, own, card } };
}

/** Texts in other languages, fetched one by one: "../../flows/texts/de/lathe.json". */
const translations = import.meta.glob<{ readonly default: string }>('../../flows/texts/*/*.json', {
  query: '?raw',
});

/** The same text in the language; as it is where there are no texts for it, or where they do not fit. */
async function inLanguage(id: string, text: string, { code }: Language): Promise<string> {
  const load = translations[`../../flows/texts/${code}/${id}.json`];
  if (!load) return text;
  const { default: texts } = await load();
  const { translateFile } = await import('../flow/index.ts');
  const made = translateFile(id, text, texts);
  return made.ok ? made.text : text;
}

/** The shelf in a language. English needs nothing fetched. */
export async function shippedFlowsIn(language: Language): Promise<readonly ShelfEntry[]> {
  return Promise.all(
    shippedFlows().map(async (entry) => {
      const [flow, kind] = await Promise.all([
        inLanguage(entry.id, entry.flow, language),
        inLanguage(entry.machineKind, entry.kind, language),
      ]);
      const { title, about } = JSON.parse(flow) as FlowHead;
      const { title: kindTitle, cautions } = JSON.parse(kind) as KindHead;
      return { ...entry, title, about, kindTitle, cautions, flow, kind };
    }),
  );
}

export function shippedFlows(): readonly ShelfEntry[] {
  const kinds = new Map(
    kindTexts.map((text) => {
      const head = JSON.parse(text) as KindHead;
      return [head.id, { head, text }] as const;
    }),
  );
  return flowTexts.flatMap((flow) => {
    const { id, title, about, machineKind, revision, steps } = JSON.parse(flow) as FlowHead;
    const kind = kinds.get(machineKind);
    if (!kind) return [];
    const { title: kindTitle, cautions } = kind.head;
    const heads = { id, title, about, machineKind, kindTitle, cautions, revision };
    return [{ ...heads, steps: steps.length, flow, kind: kind.text }];
  });
}
