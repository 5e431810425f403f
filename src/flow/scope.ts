/** The names a flow's values can come from, each with its quantity. */

import { findRule, type Quantity, quantities, type Rule } from '../trade/index.ts';
import { cardFields } from './card.ts';
import type { FlowFile, FlowInput, FlowWorking, Reading, Step } from './flow-shape.ts';
import type { SpeedQuantity } from './kind-shape.ts';
import { listed, suggestion } from './nearest.ts';
import type { ValueRef } from './words-shape.ts';

/** What a value is: a quantity in its base unit, one of some words, or a list of a quantity. */
export type Meaning =
  | { readonly kind: 'number'; readonly quantity: Quantity }
  | { readonly kind: 'word'; readonly options?: readonly string[] }
  | { readonly kind: 'list'; readonly quantity: Quantity }
  /** Its own quantity or rule is a fault already: whatever uses it is not to blame. */
  | { readonly kind: 'unknown' };

export interface Scope {
  /** What speeds of the machine are told in. */
  readonly speed: SpeedQuantity;
  readonly inputs: ReadonlyMap<string, FlowInput>;
  readonly workings: ReadonlyMap<string, FlowWorking>;
  readonly readings: ReadonlyMap<string, { readonly reading: Reading; readonly step: Step }>;
}

export function scopeOf(flow: FlowFile, speed: SpeedQuantity): Scope {
  const readings = flow.steps.flatMap((step) => {
    const reading = readingOf(step);
    return reading ? [[reading.id, { reading, step }] as const] : [];
  });
  return {
    speed,
    inputs: new Map(flow.inputs.map((input) => [input.id, input])),
    workings: new Map(flow.workings.map((working) => [working.id, working])),
    readings: new Map(readings),
  };
}

/** The reading a step takes, if it takes one. */
export function readingOf(step: Step): Reading | undefined {
  return 'reading' in step ? step.reading : undefined;
}

/** What a reference stands for, or the sentence that says why it stands for nothing. */
export function meaningOf(ref: ValueRef, scope: Scope): Meaning | string {
  if ('input' in ref) return inputMeaning(ref.input, scope);
  if ('working' in ref) return workingMeaning(ref.working, ref.part, scope);
  if ('reading' in ref) return readingMeaning(ref.reading, scope);
  if ('card' in ref) return cardMeaning(ref.card, scope);
  if ('word' in ref) return { kind: 'word', options: [ref.word] };
  return { kind: 'number', quantity: 'ratio' };
}

function inputMeaning(name: string, scope: Scope): Meaning | string {
  const input = scope.inputs.get(name);
  if (!input) return unknown('input', name, scope.inputs.keys());
  return 'options' in input
    ? { kind: 'word', options: input.options }
    : numberMeaning(input.quantity);
}

function workingMeaning(name: string, part: string | undefined, scope: Scope): Meaning | string {
  const working = scope.workings.get(name);
  if (!working) return unknown('working', name, scope.workings.keys());
  const rule = findRule(working.rule);
  if (!rule) return { kind: 'unknown' };
  if (part === undefined) return { kind: 'number', quantity: rule.output.quantity };
  return partMeaning(rule, part);
}

function partMeaning(rule: Rule, part: string): Meaning | string {
  const parts = rule.output.parts ?? {};
  const quantity = Object.hasOwn(parts, part) ? parts[part] : undefined;
  if (quantity) return { kind: 'number', quantity };
  return `The rule "${rule.name}" gives no part "${part}". It gives: ${listed(Object.keys(parts))}.${suggestion(part, Object.keys(parts))}`;
}

function readingMeaning(name: string, scope: Scope): Meaning | string {
  const found = scope.readings.get(name);
  if (!found) return unknown('reading', name, scope.readings.keys());
  return numberMeaning(found.reading.quantity);
}

function numberMeaning(quantity: string): Meaning {
  const known = quantities.find((one) => one === quantity);
  return known ? { kind: 'number', quantity: known } : { kind: 'unknown' };
}

function cardMeaning(name: string, { speed }: Scope): Meaning | string {
  const field = Object.hasOwn(cardFields, name) ? cardFields[name] : undefined;
  if (field === undefined) return unknown('field of a machine card', name, Object.keys(cardFields));
  if (field === 'speeds') return { kind: 'list', quantity: speed };
  if (field === 'speed') return { kind: 'number', quantity: speed };
  if (field === 'feeds') return { kind: 'list', quantity: 'feedPerRev' };
  return field === 'word' ? { kind: 'word' } : { kind: 'number', quantity: field };
}

function unknown(what: string, name: string, names: Iterable<string>): string {
  const all = [...names];
  return `There is no ${what} "${name}". There are: ${listed(all)}.${suggestion(name, all)}`;
}
