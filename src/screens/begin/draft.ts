/** A job before it is begun: who, on which machine, with which numbers. Pure. */

import type { Pace } from '../../bench/index.ts';
import type { Card, Flow, FlowInput, JobInputs } from '../../flow/index.ts';
import { beginTexts, type Language, sayIn } from '../../texts/index.ts';
import type { ProofChoice } from '../world.ts';
import { isTyped, readInput, shownInput } from './input-text.ts';

export interface Draft {
  readonly operator: string;
  readonly cardId: string;
  /** An instructor is to look before the first cut. */
  readonly releaseFirst?: boolean;
  /** How much is to be said; without a choice, what is proposed for the operator. */
  readonly pace?: Pace;
  /** The numbers proposed, in base units: they stay exact, whatever unit they are shown in. */
  readonly proposed: JobInputs;
  /** What was typed or picked over them. */
  readonly typed: Readonly<Record<string, string>>;
}

export type DraftRead =
  | { readonly ok: true; readonly inputs: JobInputs }
  | { readonly ok: false; readonly faults: Readonly<Record<string, string>> };

/** The text that stands in a field now. */
export function textIn(
  draft: Draft,
  input: FlowInput,
  units: Card['units'],
  language: Language,
): string {
  const typed = draft.typed[input.id];
  if (typed !== undefined) return typed;
  const value = draft.proposed[input.id];
  if (isTyped(input) && typeof value === 'number') return shownInput(input, value, units, language);
  return String(value ?? '');
}

/** All numbers of the draft, or what is wrong with each field, and with the name. */
export function readDraft(flow: Flow, draft: Draft, units: Card['units']): DraftRead {
  const { language } = flow;
  const inputs: Record<string, number | string> = {};
  const faults: Record<string, string> = {};
  if (draft.operator.trim() === '') faults.operator = sayIn(language, beginTexts)('whoMissing');
  for (const input of flow.file.inputs) {
    const proposed = draft.proposed[input.id];
    if (draft.typed[input.id] === undefined && proposed !== undefined) {
      inputs[input.id] = proposed;
      continue;
    }
    const read = readInput(input, textIn(draft, input, units, language), units, language);
    if (read.ok) inputs[input.id] = read.value;
    else faults[input.id] = read.fault;
  }
  return Object.keys(faults).length > 0 ? { ok: false, faults } : { ok: true, inputs };
}

/** Of the faults that were told, those that the draft still has; what was wrong with the job as a whole is open again. */
export function stillFaulty(
  told: Readonly<Record<string, string>>,
  flow: Flow,
  draft: Draft,
  units: Card['units'],
): Readonly<Record<string, string>> {
  const read = readDraft(flow, draft, units);
  const now = Object.entries(read.ok ? {} : read.faults);
  return Object.fromEntries(now.filter(([field]) => field in told));
}

/** What is proved before the job begins; nothing while a number is missing or wrong. Who makes it does not count. */
export function proofChoice(flow: Flow, draft: Draft, units: Card['units']): ProofChoice | null {
  const read = readDraft(flow, { ...draft, operator: '-' }, units);
  if (!read.ok || draft.cardId === '') return null;
  return {
    flowId: flow.file.id,
    cardId: draft.cardId,
    inputs: read.inputs,
    ...(draft.releaseFirst ? { releaseFirst: true } : {}),
  };
}

/** The card to begin with: the first wished one that is there, else one with the dials the flow is written in. */
export function cardAmong(
  cards: readonly Card[],
  wished: readonly (string | undefined)[],
  flow: Flow,
): Card | undefined {
  for (const id of wished) {
    const card = cards.find((one) => one.id === id);
    if (card) return card;
  }
  const inInches = flow.file.inputs.some((input) => isTyped(input) && input.unit === 'in');
  return cards.find((card) => card.units === (inInches ? 'inch' : 'metric')) ?? cards[0];
}
