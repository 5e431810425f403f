/** A shop's own material while it is written: one text a field, and what is wrong with each. Pure. */

import type { Say, shopTexts } from '../../texts/index.ts';
import {
  type Material,
  materialNames,
  parseMeasure,
  type Quantity,
  shopRanges,
} from '../../trade/index.ts';

export const columns = ['turn', 'drill', 'ream', 'mill', 'part', 'thread', 'tap'] as const;
export const toolColumns = ['hss', 'carbide', 'coated'] as const;
export const groups = ['P', 'M', 'K', 'N', 'S', 'H', 'O'] as const;

export type Column = (typeof columns)[number];
export type ToolColumn = (typeof toolColumns)[number];

/** Texts by the name of the field: "title", "density", "turn.hss". */
export type MaterialTexts = Readonly<Record<string, string>>;
export type FieldFaults = Readonly<Record<string, string>>;

export type MaterialDraftRead =
  | { readonly ok: true; readonly row: Material }
  | { readonly ok: false; readonly faults: FieldFaults };

/** The numbers of a row that stand by themselves. `quantity` lets a unit stand behind the number. */
export const numberFields = [
  { key: 'modulus', unit: 'N/mm²', quantity: 'stress', needed: true },
  { key: 'expansion', unit: '10⁻⁶/K', quantity: 'expansion', needed: true },
  { key: 'density', unit: 'kg/m³', quantity: null, needed: true },
  { key: 'kc', unit: 'N/mm²', quantity: 'stress', needed: false },
  { key: 'mc', unit: '', quantity: null, needed: false },
] as const satisfies readonly {
  readonly key: keyof typeof shopRanges;
  readonly unit: string;
  readonly quantity: Quantity | null;
  readonly needed: boolean;
}[];

/** A row as texts, for the form. The name stays empty where it must be a new one. */
export function textsOf(row: Material, named: boolean): MaterialTexts {
  const speeds = columns.flatMap((column) =>
    toolColumns.map((tool, at) => [`${column}.${tool}`, textOf(row.speeds[column][at])] as const),
  );
  return {
    title: named ? row.title : '',
    iso: row.iso,
    modulus: textOf(row.modulus),
    expansion: textOf(row.expansion),
    density: textOf(row.density),
    kc: textOf(row.force?.kc),
    mc: textOf(row.force?.mc),
    cutDry: row.cutDry ? 'yes' : 'no',
    source: named ? row.sources.turn : '',
    ...Object.fromEntries(speeds),
  };
}

function textOf(value: number | null | undefined): string {
  return value === null || value === undefined ? '' : String(value);
}

/** "Gate brass 2" as "gate-brass-2": the name by which a run keeps it. */
export function nameOf(title: string): string {
  const plain = title.normalize('NFD').replace(/\p{M}/gu, '').toLowerCase();
  return plain
    .replace(/[^a-z0-9]+/g, '-')
    .replace(/^-+|-+$/g, '')
    .slice(0, 40);
}

/**
 * The row, or a sentence for each field that is wrong. `name` is that of the row being changed; a new one
 * takes its name from the title, and must be none of `taken` nor of the table.
 */
export function readMaterialDraft(
  texts: MaterialTexts,
  say: Say<typeof shopTexts>,
  taken: readonly string[],
  name?: string,
): MaterialDraftRead {
  const faults: Record<string, string> = {};
  const number = (key: string, want: Wanted): number | null => {
    const read = readNumber(texts[key] ?? '', want, say);
    if (typeof read === 'string') faults[key] = read;
    return typeof read === 'string' ? null : read;
  };
  const own = nameOfRow(texts, say, taken, name, faults);
  const numbers = Object.fromEntries(
    numberFields.map(({ key, unit, quantity, needed }) => {
      const want = { what: say(key), range: shopRanges[key], unit, quantity, needed };
      return [key, number(key, want)];
    }),
  );
  const speeds = Object.fromEntries(
    columns.map((column) => [
      column,
      toolColumns.map((tool) => number(`${column}.${tool}`, wantedSpeed(column, tool, say))),
    ]),
  );
  const { kc = null, mc = null } = numbers;
  if ((kc === null) !== (mc === null) && !faults.kc && !faults.mc) faults.kc = say('both');
  const source = (texts.source ?? '').trim();
  if (source === '') faults.source = say('needed', { what: say('source') });
  if (Object.keys(faults).length > 0) return { ok: false, faults };
  return {
    ok: true,
    row: {
      name: own,
      title: (texts.title ?? '').trim(),
      iso: groups.find((one) => one === texts.iso) ?? 'P',
      speeds: speeds as unknown as Material['speeds'],
      ...(kc === null || mc === null ? {} : { force: { kc, mc } }),
      modulus: numbers.modulus ?? 0,
      expansion: numbers.expansion ?? 0,
      density: numbers.density ?? 0,
      cutDry: texts.cutDry === 'yes',
      sources: sourcesOf(source),
    },
  };
}

function nameOfRow(
  texts: MaterialTexts,
  say: Say<typeof shopTexts>,
  taken: readonly string[],
  kept: string | undefined,
  faults: Record<string, string>,
): string {
  const name = kept ?? nameOf(texts.title ?? '');
  const others = [...materialNames, ...taken].filter((one) => one !== kept);
  if (name === '') faults.title = say('nameNeeded');
  else if (others.includes(name)) faults.title = say('nameTaken', { name });
  return name;
}

interface Wanted {
  readonly what: string;
  readonly range: readonly [number, number];
  readonly unit: string;
  readonly quantity: Quantity | null;
  readonly needed: boolean;
}

export function wantedSpeed(column: Column, tool: ToolColumn, say: Say<typeof shopTexts>): Wanted {
  const what = say('speedOf', { operation: say(column), tool: say(tool) });
  const range = shopRanges.speed;
  return { what, range, unit: 'm/min', quantity: 'surfaceSpeed', needed: tool === 'hss' };
}

/** The number; nothing for an empty field that may be; or the sentence that says what is wrong. */
function readNumber(
  text: string,
  { what, range: [low, high], unit, quantity, needed }: Wanted,
  say: Say<typeof shopTexts>,
): number | null | string {
  const plain = text.trim().replace(',', '.');
  if (plain === '') return needed ? say('needed', { what }) : null;
  const value = quantity === null ? Number(plain) : measured(plain, quantity);
  const inside = value >= low && value <= high;
  return inside ? value : say('outOfRange', { what, text: text.trim(), low, high, unit });
}

function measured(text: string, quantity: Quantity): number {
  const read = parseMeasure(text, quantity);
  return read.ok ? read.value : Number.NaN;
}

/** One sentence for the whole row: a shop writes down one sheet. */
function sourcesOf(source: string): Material['sources'] {
  const each = { turn: source, hole: source, mill: source, part: source, thread: source };
  return { ...each, force: source, modulus: source, expansion: source, density: source };
}
