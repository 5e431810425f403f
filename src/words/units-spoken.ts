/** Finds a unit by how it is written or heard, and gives its spoken and shown names. */
import { UNITS, type Unit } from './unit-table.ts';

export type { Measure, Unit } from './unit-table.ts';

const byWriting = new Map<string, Unit>();
const byHearing = new Map<string, Unit[]>();
for (const known of UNITS) {
  for (const written of [...known.alsoWritten, known.id]) byWriting.set(written, known);
  for (const heard of known.heard) byHearing.set(heard, [...(byHearing.get(heard) ?? []), known]);
}

/** The unit written so ("mm", "rev/min", "µm", "°"), or null. */
export function unitOf(written: string): Unit | null {
  return byWriting.get(written) ?? null;
}

/** The units that these plain words may mean: "minutes" is a time and a part of a degree. */
export function unitsHeard(words: string): readonly Unit[] {
  return byHearing.get(words) ?? [];
}

/** Words in the longest name of a unit that may be heard. */
export const LONGEST_UNIT_NAME = Math.max(
  ...[...byHearing.keys()].map((name) => name.split(' ').length),
);

/** The spoken name beside a value: "millimetre" for exactly one, else "millimetres". Unknown units are said as written. */
export function unitName(written: string, one: boolean): string {
  const known = unitOf(written);
  if (known === null) return written;
  return one ? known.one : known.many;
}

/** As shown on the screen: "µm", "rpm", "°". Unknown units are shown as written. */
export function unitShown(written: string): string {
  return unitOf(written)?.shown ?? written;
}

/** Every unit this room knows, as flows and cards write it. */
export const UNIT_IDS: readonly string[] = UNITS.map((known) => known.id);
