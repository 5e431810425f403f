/** A question to a trade rule as it stands on the Slate: texts as typed, read into the rule's own numbers. Pure. */

import { figureIn, type Language, sayIn, slateTexts, unitIn } from '../../texts/index.ts';
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
export function firstTexts(
  rule: Rule,
  known: Readonly<Record<string, RuleValue>>,
  language: Language,
): Texts {
  return Object.fromEntries(
    rule.inputs.map((input) => [input.name, firstText(input, known, language)]),
  );
}

function firstText(
  input: RuleInput,
  known: Readonly<Record<string, RuleValue>>,
  language: Language,
): FieldText {
  const unit = 'quantity' in input ? baseUnitOf(input.quantity) : '';
  const value = known[input.name] ?? ('default' in input ? input.default : undefined);
  if (value === undefined) {
    const only = input.kind === 'choice' && !input.optional ? (input.options[0] ?? '') : '';
    return { text: only, unit };
  }
  const text = Array.isArray(value)
    ? value.map((one) => short(one, language)).join(language.spoken ? '; ' : ', ')
    : short(value as number | string, language);
  return { text, unit };
}

function short(value: number | string, language: Language): string {
  if (typeof value !== 'number') return value;
  return figureIn(language, String(Number(value.toPrecision(6))));
}

export function askSlate(rule: Rule, texts: Texts, language: Language): SlateAnswer {
  const values: Record<string, RuleValue> = {};
  const faults: Record<string, string> = {};
  const missing: string[] = [];
  for (const input of rule.inputs) {
    const field = texts[input.name];
    if (!field || field.text.trim() === '') {
      if (!isOptional(input)) missing.push(input.name);
      continue;
    }
    const read = readField(input, field, language);
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

function readField(input: RuleInput, { text, unit }: FieldText, language: Language): Read {
  if (input.kind === 'choice' || input.kind === 'text') return { ok: true, value: text.trim() };
  const hasUnit = /[a-zµ"″'′°%]/i.test(text.replace(/\de[+-]?\d/gi, ''));
  const whole = hasUnit || unit === '' ? text : `${text} ${unit}`;
  return input.kind === 'list'
    ? parseMeasures(whole, input.quantity, language)
    : parseMeasure(whole, input.quantity, language);
}

/** What a person knows an input or a part by: "Surface speed" for "surfaceSpeed", where it has no name of its own. */
export function wordsOf(name: string, label?: string): string {
  if (label !== undefined) return label.charAt(0).toUpperCase() + label.slice(1);
  const words = name.replace(/([a-z])([A-Z0-9])/g, '$1 $2').toLowerCase();
  return words.charAt(0).toUpperCase() + words.slice(1);
}

/** The allowed stretch of a number in a unit: "1 to 2000 mm". Empty when it is as good as open. */
export function rangeOfInput(input: RuleInput, unit: string, language: Language): string {
  if (input.kind !== 'number' && input.kind !== 'list') return '';
  const [low, high] = [input.min, input.max].map((value) =>
    short(fromBase(value, unit, input.quantity), language),
  );
  const above = 'aboveMin' in input && input.aboveMin;
  const values = { low: low ?? '', high: high ?? '', unit: unitIn(language, unit) };
  return sayIn(language, slateTexts)(above ? 'rangeAbove' : 'range', values).trim();
}
