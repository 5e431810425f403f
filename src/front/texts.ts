/// <reference types="vite/client" />
/** The flows, machine kinds and machine cards that are shipped with the page, as their texts. */

import { faultText, readCard, readFlow, readKind } from '../flow/index.ts';
import type { CardEntry, ShelfEntry } from '../screens/world.ts';

const flowTexts = raw(import.meta.glob('../../flows/*.json', { query: '?raw', eager: true }));
const kindTexts = raw(import.meta.glob('../../flows/kinds/*.json', { query: '?raw', eager: true }));
const cardTexts = raw(
  import.meta.glob('../../flows/machines/*.json', { query: '?raw', eager: true }),
);

function raw(modules: Record<string, unknown>): readonly string[] {
  return Object.values(modules).map((module) => (module as { default: string }).default);
}

/** Shipped files were read and proved by the tests: a fault here is a mistake of ours. */
function must<T>(read: { ok: true; value: T } | { ok: false; faults: readonly string[] }): T {
  if (!read.ok) throw new Error(`A shipped file is broken: ${read.faults.join(' ')}`);
  return read.value;
}

export function shippedCards(): readonly CardEntry[] {
  const cards = cardTexts.map((card) => must(readCardEntry(card, false)));
  // The file names put inch before metric; the metric card is the one most begin with.
  return cards.reverse();
}

export type CardReading =
  | { readonly ok: true; readonly value: CardEntry }
  | { readonly ok: false; readonly faults: readonly string[] };

/** A machine card's text as an entry, or its faults with line and column. */
export function readCardEntry(card: string, own: boolean): CardReading {
  const read = readCard('card', card);
  if (!read.ok) return { ok: false, faults: read.faults.map(faultText) };
  const { id, title, machineKind } = read.value;
  return { ok: true, value: { id, title, machineKind, own, card } };
}

export function shippedFlows(): readonly ShelfEntry[] {
  const kinds = kindTexts.map((text) => {
    const read = readKind('kind', text);
    if (!read.ok) throw new Error(read.faults.map(faultText).join(' '));
    return { kind: read.value, text };
  });
  const byId = new Map(kinds.map(({ kind }) => [kind.id, kind]));
  return flowTexts.map((flow) => {
    const read = readFlow('flow', flow, byId);
    if (!read.ok) throw new Error(read.faults.map(faultText).join(' '));
    const { file, kind } = read.flow;
    return {
      id: file.id,
      title: file.title,
      about: file.about,
      machineKind: kind.id,
      kindTitle: kind.title,
      cautions: kind.cautions,
      revision: file.revision,
      steps: file.steps.length,
      flow,
      kind: kinds.find((one) => one.kind.id === kind.id)?.text ?? '',
    };
  });
}
