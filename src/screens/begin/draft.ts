/** A job before it is begun: who, on which machine, with which numbers, all as typed. */

import type { Card, Flow, FlowInput, JobInputs } from '../../flow/index.ts';
import { isTyped, proposed, readInput, shownInput } from './input-text.ts';

export interface Draft {
  readonly operator: string;
  readonly cardId: string;
  /** Only what was typed or picked; the rest is as the flow proposes. */
  readonly typed: Readonly<Record<string, string>>;
}

export type DraftRead =
  | { readonly ok: true; readonly inputs: JobInputs }
  | { readonly ok: false; readonly faults: Readonly<Record<string, string>> };

/** The text that stands in a field now. */
export function textIn(draft: Draft, input: FlowInput, units: Card['units']): string {
  return draft.typed[input.id] ?? proposed(input, units);
}

/** All numbers of the draft, or what is wrong with each field, and with the name. */
export function readDraft(flow: Flow, draft: Draft, units: Card['units']): DraftRead {
  const inputs: Record<string, number | string> = {};
  const faults: Record<string, string> = {};
  for (const input of flow.file.inputs) {
    const read = readInput(input, textIn(draft, input, units), units);
    if (read.ok) inputs[input.id] = read.value;
    else faults[input.id] = read.fault;
  }
  if (draft.operator.trim() === '') faults.operator = 'Write who is making it.';
  return Object.keys(faults).length > 0 ? { ok: false, faults } : { ok: true, inputs };
}

/** The numbers of a past run as they would be typed. Inputs the flow no longer has are left out. */
export function typedLike(flow: Flow, past: JobInputs, units: Card['units']): Draft['typed'] {
  const texts = flow.file.inputs.flatMap((input) => {
    const value = past[input.id];
    if (isTyped(input)) {
      return typeof value === 'number' ? [[input.id, shownInput(input, value, units)]] : [];
    }
    return typeof value === 'string' && input.options.includes(value) ? [[input.id, value]] : [];
  });
  return Object.fromEntries(texts);
}
