/** A question to a trade rule as it stands on the Slate: texts as typed, read into the rule's own numbers. Pure. */

import {
  answerRule,
  baseUnitOf,
  fromBase,
  parseMeasure,
  parseMeasures,
  type Rule,
  type RuleAnswer,
  type RuleInput,
  type RuleValue,
} from '../../trade/index.ts';

/** What stands in one field: the text, and the unit chosen beside it. */
export interface FieldText {
  readonly text: string;
  readonly unit: string;
}
export type Texts = Readonly<Record<string, FieldText>>;

export type SlateAnswer =
  | {
      readonly kind: 'answer';
      readonly values: Readonly<Record<string, RuleValue>>;
      readonly answer: Extract<RuleAnswer, { ok: true }>;
    }
  /** By input name; '' is about all of them together. */
  | { readonly kind: 'faults'; readonly faults: Readonly<Record<string, string>> }
  /** Inputs that are still empty. */
  | { readonly kind: 'open'; readonly missing: readonly string[] };

/** Before anybody has typed: the rule's own defaults. */
export function firstTexts(rule: Rule, known: Readonly<Record<string, RuleValue>>): Texts {
  return Object.fromEntries(rule.inputs.map((input) => [input.name, firstText(input, known)]));
}

function firstText(input: RuleInput, known: Readonly<Record<string, RuleValue>>): FieldText {
  const unit = 'quantity' in input ? baseUnitOf(input.quantity) : '';
  const value = known[input.name] ?? ('default' in input ? input.default : undefined);
  if (value === undefined) {
    const only = input.kind === 'choice' && !input.optional ? (input.options[0] ?? '') : '';
    return { text: only, unit };
  }
  const text = Array.isArray(value) ? value.map(short).join(', ') : short(value as number | string);
  return { text, unit };
}

function short(value: number | string): string {
  return typeof value === 'number' ? String(Number(value.toPrecision(6))) : value;
}

export function askSlate(rule: Rule, texts: Texts): SlateAnswer {
  const values: Record<string, RuleValue> = {};
  const faults: Record<string, string> = {};
  const missing: string[] = [];
  for (const input of rule.inputs) {
    const field = texts[input.name];
    if (!field || field.text.trim() === '') {
      if (!isOptional(input)) missing.push(input.name);
      continue;
    }
    const read = readField(input, field);
    if (read.ok) values[input.name] = read.value;
    else faults[input.name] = read.fault;
  }
  if (Object.keys(faults).length > 0) return { kind: 'faults', faults };
  if (missing.length > 0) return { kind: 'open', missing };
  const answer = answerRule(rule, values);
  if (!answer.ok) return { kind: 'faults', faults: { '': answer.fault } };
  return { kind: 'answer', values, answer };
}

function isOptional(input: RuleInput): boolean {
  return input.optional === true || ('default' in input && input.default !== undefined);
}

type Read = { readonly ok: true; readonly value: RuleValue } | { ok: false; fault: string };

function readField(input: RuleInput, { text, unit }: FieldText): Read {
  if (input.kind === 'choice' || input.kind === 'text') return { ok: true, value: text.trim() };
  const hasUnit = /[a-zµ"″'′°%]/i.test(text.replace(/\de[+-]?\d/gi, ''));
  const whole = hasUnit || unit === '' ? text : `${text} ${unit}`;
  return input.kind === 'list'
    ? parseMeasures(whole, input.quantity)
    : parseMeasure(whole, input.quantity);
}

/** "surfaceSpeed" as "Surface speed". */
export function wordsOf(name: string): string {
  const words = name.replace(/([a-z])([A-Z0-9])/g, '$1 $2').toLowerCase();
  return words.charAt(0).toUpperCase() + words.slice(1);
}

/** The allowed stretch of a number in a unit: "1 to 2000 mm". Empty when it is as good as open. */
export function rangeOfInput(input: RuleInput, unit: string): string {
  if (input.kind !== 'number' && input.kind !== 'list') return '';
  const shown = (value: number) => short(fromBase(value, unit, input.quantity));
  const above = 'aboveMin' in input && input.aboveMin ? 'above ' : '';
  return `${above}${shown(input.min)} to ${shown(input.max)} ${unit}`.trim();
}
