/** A flow of the Shelf, read in the language of the page, which the entry's texts are in. It is read once, however often the screen is drawn. */

import { type Flow, faultTextIn, readFlow, readKind } from '../../flow/index.ts';
import type { Language } from '../../texts/index.ts';
import type { ShelfEntry } from '../world.ts';

export type ReadEntry =
  | { readonly ok: true; readonly flow: Flow }
  | { readonly ok: false; readonly faults: readonly string[] };

const known = new WeakMap<ShelfEntry, ReadEntry>();

export function readEntry(entry: ShelfEntry, language: Language): ReadEntry {
  const old = known.get(entry);
  if (old) return old;
  const read = readAnew(entry, language);
  known.set(entry, read);
  return read;
}

function readAnew(entry: ShelfEntry, language: Language): ReadEntry {
  const kind = readKind(entry.kindTitle, entry.kind, language);
  if (!kind.ok) return { ok: false, faults: kind.faults.map(faultTextIn(language)) };
  const flow = readFlow(entry.title, entry.flow, new Map([[kind.value.id, kind.value]]), language);
  if (!flow.ok) return { ok: false, faults: flow.faults.map(faultTextIn(language)) };
  return { ok: true, flow: flow.flow };
}
