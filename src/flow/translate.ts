/** Puts the texts of another language into a flow, a machine kind or a machine card. Steps, gates and numbers stay as they are. */

import { z } from 'zod';
import type { Fault, Path } from './fault.ts';
import { suggestion } from './nearest.ts';
import { namesIn } from './resolve-texts.ts';
import { readSource, type Source } from './source.ts';
import { idShape, schemaShape } from './words-shape.ts';

/** A file of texts: "steps.face.say" → the sentence. Lists of phrases and cautions are lists here too. */
export const textsShape = z.strictObject({
  $schema: schemaShape,
  followrest: z.literal('texts'),
  version: z.literal(1),
  /** "de". */
  language: z.string().regex(/^[a-z]{2,3}$/),
  /** The id of the flow or machine kind. */
  of: idShape,
  texts: z.record(
    z.string().max(160),
    z.union([z.string().min(1).max(280), z.array(z.string().min(1).max(280))]),
  ),
});

export type Translation =
  | { readonly ok: true; readonly text: string }
  | { readonly ok: false; readonly faults: readonly Fault[] };

type Entry = string | readonly string[];

/** Keys whose sentences are shown or said. */
const saidKeys = new Set(
  'title about label short say long why remedy ask sentence settle because word also cautions notes'.split(
    ' ',
  ),
);
/** Here words name choices of a rule or facts, and are no texts. */
const silentPlaces = new Set(['given', 'needs', 'roles', 'phaseParts', 'gates']);

/** The texts of a file, by their keys: ids name the members of lists. `text` is a file that was read without a fault. */
export function textsOfFile(text: string): ReadonlyMap<string, Entry> {
  const found = new Map<string, Entry>();
  visit(JSON.parse(text), [], (path, entry) => {
    found.set(path.join('.'), entry);
    return entry;
  });
  return found;
}

/** The file in another language, or every fault of its texts with line and column: unknown keys, missing ones, other {names}. */
export function translateFile(file: string, text: string, texts: string): Translation {
  const read = readSource(file, texts);
  if (!read.ok) return read;
  const parsed = textsShape.safeParse(read.source.value);
  if (!parsed.success) return { ok: false, faults: shapeFaults(read.source, parsed.error) };
  const table: Readonly<Record<string, Entry>> = parsed.data.texts;
  const faults = [...judge(textsOfFile(text), table, read.source)];
  if (faults.length > 0) return { ok: false, faults };
  const value = visit(JSON.parse(text), [], (path, entry) => table[path.join('.')] ?? entry);
  return { ok: true, text: JSON.stringify(value, null, 2) };
}

function shapeFaults(source: Source, error: z.ZodError): readonly Fault[] {
  return error.issues.map(({ path, message }) => source.fault(path as Path, message));
}

function* judge(
  own: ReadonlyMap<string, Entry>,
  table: Readonly<Record<string, Entry>>,
  source: Source,
): Iterable<Fault> {
  for (const [key, entry] of Object.entries(table)) {
    const was = own.get(key);
    const message = was === undefined ? unknownText(key, own) : otherForm(was, entry);
    if (message !== '') yield source.fault(['texts', key], message);
  }
  for (const key of own.keys()) {
    if (!Object.hasOwn(table, key)) {
      yield source.fault(['texts'], `The text "${key}" is missing. Add it to "texts".`);
    }
  }
}

function unknownText(key: string, own: ReadonlyMap<string, Entry>): string {
  return `There is no text "${key}".${suggestion(key, [...own.keys()])} Take it out.`;
}

function otherForm(was: Entry, is: Entry): string {
  if (typeof was !== typeof is) {
    return typeof was === 'string' ? 'One text is wanted here.' : 'A list of texts is wanted here.';
  }
  const [wanted, found] = [was, is].map((entry) =>
    [...new Set(namesIn([entry].flat().join(' ')).names)].sort().join(', '),
  );
  return wanted === found
    ? ''
    : `The text puts in {${found}}, but the English one {${wanted}}. Use the same names.`;
}

type Change = (path: readonly string[], entry: Entry) => Entry;

function visit(value: unknown, path: readonly string[], change: Change): unknown {
  if (Array.isArray(value)) {
    return value.map((one, index) => visit(one, [...path, nameOf(one, index)], change));
  }
  if (typeof value !== 'object' || value === null) return value;
  return Object.fromEntries(
    Object.entries(value).map(([key, one]) => [key, visitKey(one, key, path, change)]),
  );
}

function visitKey(value: unknown, key: string, path: readonly string[], change: Change): unknown {
  const here = [...path, key];
  if (silentPlaces.has(key)) return value;
  if (isEntry(value) && isSaid(key, path)) return change(here, value);
  return visit(value, here, change);
}

/** Prompts, remedies and the names of parts are texts whatever their key. */
function isSaid(key: string, path: readonly string[]): boolean {
  const [first] = path;
  const last = path.at(-1);
  return (
    saidKeys.has(key) ||
    last === 'remedies' ||
    first === 'prompts' ||
    (key === 'name' && first === 'parts')
  );
}

function isEntry(value: unknown): value is Entry {
  if (typeof value === 'string') return true;
  return Array.isArray(value) && value.length > 0 && value.every((one) => typeof one === 'string');
}

function nameOf(value: unknown, index: number): string {
  const { id } = (typeof value === 'object' && value !== null ? value : {}) as { id?: unknown };
  return typeof id === 'string' ? id : String(index);
}
