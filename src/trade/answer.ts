/** Asks one rule: checks what was given against the rule's inputs, then works it out. */

import { englishLanguage, sequence, type Worded, worded } from '../texts/index.ts';
import { inLanguage } from './in-language.ts';
import { nearestName } from './nearest.ts';
import type {
  ChoiceInput,
  ListInput,
  NumberInput,
  Rule,
  RuleAnswer,
  RuleInput,
  RuleValue,
  RuleValues,
  Worked,
} from './rule.ts';
import { show } from './show.ts';
import { baseUnitOf } from './units.ts';

interface Ranged {
  readonly quantity: NumberInput['quantity'];
  readonly min: number;
  readonly max: number;
  readonly aboveMin?: boolean;
}

function withUnit(value: number, input: Ranged): Worded {
  const unit = baseUnitOf(input.quantity);
  return unit === '' ? show(value, 8) : worded`${show(value, 8)} ${unit}`;
}

/** The allowed range in words: "above 0 and up to 500 mm". */
export function rangeOf(input: Ranged): Worded {
  const low = input.aboveMin
    ? worded`above ${show(input.min, 8)}`
    : worded`from ${show(input.min, 8)}`;
  return worded`${low} up to ${withUnit(input.max, input)}`;
}

/** What a person knows an input by: its name, where the language of the rule has no other. */
function labelOf({ label, name }: RuleInput): string {
  return label ?? name;
}

/** A size this near to an excluded end (a millionth of a base unit) is that end. */
const NOTHING = 1e-6;

function outside(value: number, input: Ranged): boolean {
  const tooLow = input.aboveMin ? value < input.min + NOTHING : value < input.min;
  return Number.isNaN(value) || tooLow || value > input.max;
}

function numberFault(input: NumberInput, value: RuleValue): Worded | undefined {
  const { meaning } = input;
  const name = labelOf(input);
  if (typeof value !== 'number') {
    return worded`${name} came as "${String(value)}"; it is a number (${meaning}); give one ${rangeOf(input)}.`;
  }
  if (outside(value, input)) {
    return worded`${name} came as ${withUnit(value, input)}, which is not possible here; give ${meaning} ${rangeOf(input)}.`;
  }
  if (input.whole && !Number.isInteger(value)) {
    return worded`${name} came as ${show(value, 8)}; only whole numbers are possible (${meaning}).`;
  }
  return undefined;
}

function choiceFault(input: ChoiceInput, value: RuleValue): Worded | undefined {
  if (typeof value === 'string' && input.options.includes(value)) return undefined;
  const meant = nearestName(String(value), input.options);
  const hint = meant === undefined ? '' : worded` Did you mean "${meant}"?`;
  return worded`${labelOf(input)} came as "${String(value)}"; it can be ${sequence(input.options, ', ')}.${hint}`;
}

function listFault(input: ListInput, value: RuleValue): Worded | undefined {
  if (typeof value !== 'object' || value.length === 0) {
    return worded`${labelOf(input)} came without numbers; give a list (${input.meaning}), each ${rangeOf(input)}.`;
  }
  const wrong = value.find((one) => outside(one, input));
  if (wrong === undefined) return undefined;
  return worded`${labelOf(input)} has ${withUnit(wrong, input)} in it; each must be ${rangeOf(input)}.`;
}

function valueFault(input: RuleInput, value: RuleValue): Worded | undefined {
  switch (input.kind) {
    case 'number':
      return numberFault(input, value);
    case 'choice':
      return choiceFault(input, value);
    case 'list':
      return listFault(input, value);
    case 'text':
      if (typeof value === 'string' && value.trim() !== '') return undefined;
      return worded`${labelOf(input)} came empty; write ${input.meaning}, for example "${input.example}".`;
  }
}

function whatToGive(input: RuleInput): Worded {
  switch (input.kind) {
    case 'number':
      return worded`${input.meaning}, ${rangeOf(input)}`;
    case 'list':
      return worded`${input.meaning}, a list of numbers ${rangeOf(input)}`;
    case 'choice':
      return worded`${input.meaning}: ${sequence(input.options, ', ')}`;
    case 'text':
      return worded`${input.meaning}, for example "${input.example}"`;
  }
}

function strangerFault(rule: Rule, given: RuleValues): Worded | undefined {
  const names = rule.inputs.map((input) => input.name);
  const known = sequence(rule.inputs.map(labelOf), ', ');
  const stranger = Object.keys(given).find(
    (name) => given[name] !== undefined && !names.includes(name),
  );
  if (stranger === undefined) return undefined;
  const meant = nearestName(stranger, names);
  const hint = meant === undefined ? '' : worded` Did you mean "${meant}"?`;
  return worded`"${rule.name}" has no input "${stranger}"; it has ${known}.${hint}`;
}

function defaultOf(input: RuleInput): RuleValue | undefined {
  return input.kind === 'list' ? undefined : input.default;
}

/** Checked and filled values, or the first fault as a sentence: what came, what is allowed. */
export function checkValues(
  rule: Rule,
  given: RuleValues,
): { readonly ok: true; readonly values: RuleValues } | { readonly ok: false; fault: Worded } {
  const stranger = strangerFault(rule, given);
  if (stranger !== undefined) return { ok: false, fault: stranger };
  const values: Record<string, RuleValue> = {};
  for (const input of rule.inputs) {
    const value = given[input.name] ?? defaultOf(input);
    if (value === undefined) {
      if (input.optional) continue;
      return { ok: false, fault: worded`${labelOf(input)} is missing; give ${whatToGive(input)}.` };
    }
    const wrong = valueFault(input, value);
    if (wrong !== undefined) return { ok: false, fault: wrong };
    values[input.name] = value;
  }
  return { ok: true, values };
}

function isNumber(value: number | readonly number[]): boolean {
  return typeof value === 'number' ? Number.isFinite(value) : value.every(Number.isFinite);
}

/** Sums of extreme values can leave the numbers altogether; that is a refusal, never an answer. */
function sound(answer: Worked): Worked {
  if (!answer.ok) return answer;
  const parts = Object.values(answer.parts ?? {});
  if (isNumber(answer.value) && parts.every((part) => isNumber(part.value))) return answer;
  return {
    ok: false,
    fault: 'These values are so far from each other that no number comes out; check their units.',
  };
}

/**
 * The rule's answer for values in base units. Never throws for bad values: an impossible or missing
 * one comes back as a fault that says what came, what is allowed and the next move.
 */
export function answerRule(rule: Rule, given: RuleValues): RuleAnswer {
  const checked = checkValues(rule, given);
  const worked = checked.ok ? sound(rule.work(checked.values)) : checked;
  return inLanguage(worked, rule.language ?? englishLanguage);
}
