/** Finds runs among many by who, what, when and with which numbers. Pure, and quick enough for every letter typed. */

import type { RunHead } from '../../bench/index.ts';
import { type Language, logbookTexts, optionText, sayIn } from '../../texts/index.ts';
import { STATUSES } from './verdict-words.ts';
import { dateFormat } from './when.ts';

/** What is looked for; empty texts leave the question open. Days as "2026-11-25", in the device's own zone. */
export interface Wanted {
  readonly text: string;
  readonly operator: string;
  readonly flow: string;
  readonly from: string;
  readonly until: string;
  /** A number or word of the piece, or a batch: "24.95", "brass". */
  readonly piece: string;
}

export const ALL_RUNS: Wanted = {
  text: '',
  operator: '',
  flow: '',
  from: '',
  until: '',
  piece: '',
};

/** True where every run is looked for. */
export function isForAll(wanted: Wanted): boolean {
  return Object.values(wanted).every((text) => text === '');
}

/** Heads made ready once, so that a search only compares letters. */
export interface Shelved {
  readonly head: RunHead;
  readonly day: string;
  readonly text: string;
  readonly piece: string;
}

/** By language. The logbook gives the same head again as long as it is unchanged: each is made ready once. */
const ready = new Map<string, WeakMap<RunHead, Shelved>>();

export function shelve(heads: readonly RunHead[], language: Language): readonly Shelved[] {
  const known = ready.get(language.code) ?? new WeakMap<RunHead, Shelved>();
  ready.set(language.code, known);
  const dayNames = new Map<string, string>();
  const format = dateFormat(language, { dateStyle: 'medium' });
  const say = sayIn(language, logbookTexts);
  const pieceWord = say('piece').toLowerCase();
  const nameOf = (day: string, at: number) => {
    const old = dayNames.get(day);
    if (old !== undefined) return old;
    const made = format.format(at).toLowerCase();
    dayNames.set(day, made);
    return made;
  };
  return heads.map((head) => {
    const old = known.get(head);
    if (old) return old;
    const day = dayOf(head.startedAt);
    const piece = pieceText(head, pieceWord, language);
    const words = [head.flowTitle, head.operator, say(STATUSES[head.status]), head.id];
    const text = `${words.join(' ').toLowerCase()} ${nameOf(day, head.startedAt)} ${day} ${piece}`;
    const made = { head, day, text, piece };
    known.set(head, made);
    return made;
  });
}

/** In the order of the heads. Every word that is looked for must stand somewhere in the run's row. */
export function findRuns(shelved: readonly Shelved[], wanted: Wanted): readonly RunHead[] {
  const words = wordsOf(wanted.text);
  const pieces = wordsOf(wanted.piece);
  const found: RunHead[] = [];
  for (const { head, day, text, piece } of shelved) {
    if (wanted.operator !== '' && !isBy(head, wanted.operator)) continue;
    if (wanted.flow !== '' && head.flowId !== wanted.flow) continue;
    if (wanted.from !== '' && day < wanted.from) continue;
    if (wanted.until !== '' && day > wanted.until) continue;
    if (!words.every((word) => text.includes(word))) continue;
    if (!pieces.every((word) => piece.includes(word))) continue;
    found.push(head);
  }
  return found;
}

/** By id where the run has one, so that a new name finds the old runs; else by the name. */
export function isBy({ operatorId, operator }: RunHead, who: string): boolean {
  return operatorId === who || operator === who;
}

/** A decimal comma finds what a decimal point does. */
function wordsOf(text: string): readonly string[] {
  return text
    .toLowerCase()
    .replace(/(?<=\d),(?=\d)/g, '.')
    .split(/\s+/)
    .filter((word) => word !== '');
}

function pieceText({ inputs, batch }: RunHead, pieceWord: string, language: Language): string {
  const words = Object.values(inputs).map((value) =>
    typeof value === 'number'
      ? String(Number(value.toFixed(4)))
      : `${value} ${optionText(language, value)}`,
  );
  return [...words, batch ? `${pieceWord} ${batch.piece}` : ''].join(' ').toLowerCase();
}

const two = (n: number) => String(n).padStart(2, '0');

/** "2026-11-25", as the clock on the wall has it. */
export function dayOf(at: number): string {
  const date = new Date(at);
  return `${date.getFullYear()}-${two(date.getMonth() + 1)}-${two(date.getDate())}`;
}
