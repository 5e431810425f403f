/** A machine card as the fields of a form. What the form does not know is kept as it stands in the text. Pure. */

import { type Fault, faultMessage, readCard } from '../../flow/index.ts';
import { type Language, typedIn } from '../../texts/index.ts';
import type { FieldFaults } from './material-draft.ts';

/** Texts by the name of the field in the file. */
export type CardTexts = Readonly<Record<string, string>>;

/** Measures of a card that may be left out, with how one is written. */
export const cardMeasures = [
  { key: 'chuckLimit', example: '1600 rpm' },
  { key: 'motorPower', example: '1.5 kW' },
  { key: 'crossDivision', example: '0.02 mm' },
  { key: 'compoundDivision', example: '0.02 mm' },
  { key: 'quillPerTurn', example: '4 mm' },
  { key: 'leadScrewPitch', example: '3 mm' },
  { key: 'swing', example: '250 mm' },
] as const;

const words = ['title', 'machineKind', 'units', 'crossReads', 'notes'] as const;
const lists = ['speeds', 'feeds'] as const;
/** Numbers with decimals, where the language may have a comma. Speeds are whole, so that a comma parts them. */
const decimals = new Set(['feeds', 'efficiency', ...cardMeasures.map(({ key }) => key)]);
const mayBeEmpty = new Set(['crossReads', 'notes', ...cardMeasures.map(({ key }) => key)]);

type CardObject = Readonly<Record<string, unknown>>;

/** The fields of a card's text; null when the text is no object that a form could show. */
export function cardTexts(text: string): CardTexts | null {
  const card = objectIn(text);
  if (!card) return null;
  const plain = [...words, ...cardMeasures.map(({ key }) => key)].map((key) => [
    key,
    typeof card[key] === 'string' ? card[key] : '',
  ]);
  const listed = lists.map((key) => [key, listText(card[key])]);
  const efficiency = typeof card.efficiency === 'number' ? String(card.efficiency) : '';
  return { ...Object.fromEntries([...plain, ...listed]), efficiency } as CardTexts;
}

function objectIn(text: string): CardObject | null {
  try {
    const value: unknown = JSON.parse(text);
    return typeof value === 'object' && value !== null && !Array.isArray(value)
      ? (value as CardObject)
      : null;
  } catch {
    return null;
  }
}

/** "70, 115 rpm" for ["70 rpm", "115 rpm"]: the unit once, where all have the same. */
function listText(value: unknown): string {
  if (!Array.isArray(value)) return '';
  const all = value.map(String);
  const units = new Set(all.map(unitOf));
  if (units.size !== 1 || all.length < 2) return all.join(', ');
  const last = all.at(-1) ?? '';
  return [
    ...all.slice(0, -1).map((one) => one.slice(0, -unitOf(one).length || undefined).trim()),
    last,
  ].join(', ');
}

function unitOf(measure: string): string {
  return /[a-z"/°%µ²³·]+$/i.exec(measure)?.[0] ?? '';
}

/** The card's text with the form's fields put in. Without a unit a list takes that of its last member. */
export function cardWith(text: string, texts: CardTexts, language: Language): string {
  const card = objectIn(text) ?? {};
  const changed = Object.entries(texts).flatMap(([key, value]): [string, unknown][] => {
    const plain = decimals.has(key) ? typedIn(language, value.trim()) : value.trim();
    // A machine fed by hand has no feeds in its card.
    if (key === 'feeds' && plain === '' && !('feeds' in card)) return [];
    if (key === 'speeds' || key === 'feeds') return [[key, listOf(plain)]];
    if (key === 'efficiency') return plain === '' ? [] : [[key, Number(plain.replace(',', '.'))]];
    return plain === '' && mayBeEmpty.has(key) ? [] : [[key, plain]];
  });
  const fields = new Set(Object.keys(texts));
  const before = Object.entries(card).filter(([key]) => !fields.has(key));
  const order = Object.keys(card);
  const all = [...before, ...changed].sort(([a], [b]) => place(order, a) - place(order, b));
  return `${JSON.stringify(Object.fromEntries(all), null, 2)}\n`;
}

function place(order: readonly string[], key: string): number {
  const at = order.indexOf(key);
  return at < 0 ? order.length : at;
}

function listOf(text: string): readonly string[] {
  const pieces = text
    .split(/[,;]/)
    .map((piece) => piece.trim())
    .filter((piece) => piece !== '');
  const unit = unitOf(pieces.at(-1) ?? '');
  return pieces.map((piece) => (unitOf(piece) === '' && unit !== '' ? `${piece} ${unit}` : piece));
}

export interface CardFaults {
  /** By field, one sentence each. */
  readonly fields: FieldFaults;
  /** Those that no field of the form is about. */
  readonly others: readonly string[];
}

/** The faults of a card's text, each with the field it belongs to. */
export function cardFaults(text: string, texts: CardTexts, language: Language): CardFaults {
  const read = readCard('card', text, language);
  if (read.ok) return { fields: {}, others: [] };
  const placed = read.faults.map(
    (fault) => [fieldOf(fault), faultMessage(fault, language)] as const,
  );
  const known = placed.filter(([field]) => field in texts);
  return {
    fields: Object.fromEntries([...known].reverse()),
    others: placed.filter(([field]) => !(field in texts)).map(([, message]) => message),
  };
}

/** "speeds" for "$.speeds[3]". */
function fieldOf({ path }: Fault): string {
  return /^\$\.(\w+)/.exec(path)?.[1] ?? '';
}
