/** Checks that every value of a flow comes from somewhere and is of the quantity that is wanted. */

import {
  baseUnitOf,
  findRule,
  findUnit,
  type Quantity,
  quantities,
  type Rule,
  ruleNames,
  unitsOf,
} from '../trade/index.ts';
import type { Path } from './fault.ts';
import type { FlowFile, FlowInput, FlowWorking } from './flow-shape.ts';
import { listed, suggestion } from './nearest.ts';
import { type Meaning, meaningOf, type Scope } from './scope.ts';
import type { ValueRef } from './words-shape.ts';

export type Complain = (path: Path, message: string) => void;

/** What a place wants: a quantity, any number, or one of some words. */
export type Wanted =
  | { readonly quantity: Quantity }
  | 'number'
  | { readonly words: readonly string[] };

export function checkInputs(flow: FlowFile, complain: Complain): void {
  flow.inputs.forEach((input, index) => {
    const path: Path = ['inputs', index];
    if ('options' in input) checkChoice(input, path, complain);
    else checkNumber(input, path, complain);
  });
}

function checkChoice(
  input: Extract<FlowInput, { options: string[] }>,
  path: Path,
  complain: Complain,
): void {
  if (input.options.includes(input.default)) return;
  complain(
    [...path, 'default'],
    `"${input.default}" is not one of the options: ${listed(input.options)}.${suggestion(input.default, input.options)}`,
  );
}

function checkNumber(
  input: Exclude<FlowInput, { options: string[] }>,
  path: Path,
  complain: Complain,
): void {
  if (!checkUnit(input.quantity, input.unit, path, complain)) return;
  if (input.min > input.max) {
    complain(
      [...path, 'min'],
      `The least value, ${input.min}, is above the most, ${input.max}. Exchange them.`,
    );
  } else if (input.default < input.min || input.default > input.max) {
    complain(
      [...path, 'default'],
      `The default ${input.default} is outside ${input.min} to ${input.max} ${input.unit}. Change it, or the range.`,
    );
  }
}

/** True when the quantity exists and has the unit; otherwise says so. */
export function checkUnit(
  quantity: string,
  unit: string,
  path: Path,
  complain: Complain,
): quantity is Quantity {
  if (!(quantities as readonly string[]).includes(quantity)) {
    complain(
      [...path, 'quantity'],
      `There is no quantity "${quantity}".${suggestion(quantity, quantities)} There are: ${listed(quantities, 30)}.`,
    );
    return false;
  }
  if (findUnit(unit, quantity as Quantity)) return true;
  complain(
    [...path, 'unit'],
    `"${unit}" is not a unit of ${quantity}. Its units: ${listed(unitsOf(quantity as Quantity))}.`,
  );
  return false;
}

/** Workings may use inputs, the card, readings, and workings that stand above them. */
export function checkWorkings(flow: FlowFile, scope: Scope, complain: Complain): void {
  const above = new Set<string>();
  flow.workings.forEach((working, index) => {
    const path: Path = ['workings', index];
    const rule = findRule(working.rule);
    if (!rule) {
      complain(
        [...path, 'rule'],
        `There is no trade rule "${working.rule}".${suggestion(working.rule, ruleNames()) || ' Choose one from the list of trade rules.'}`,
      );
    } else checkGiven(working, rule, scope, above, path, complain);
    above.add(working.id);
  });
}

function checkGiven(
  working: FlowWorking,
  rule: Rule,
  scope: Scope,
  above: ReadonlySet<string>,
  path: Path,
  complain: Complain,
): void {
  if (working.unit !== undefined) checkUnit(rule.output.quantity, working.unit, path, complain);
  const names = rule.inputs.map((input) => input.name);
  for (const [name, ref] of Object.entries(working.given)) {
    const place = [...path, 'given', name];
    const input = rule.inputs.find((one) => one.name === name);
    if (!input) {
      complain(
        place,
        `The rule "${rule.name}" takes no "${name}". It takes: ${listed(names)}.${suggestion(name, names)}`,
      );
    } else if ('working' in ref && scope.workings.has(ref.working) && !above.has(ref.working)) {
      complain(place, belowSentence(working.id, ref.working));
    } else checkRuleInput(input, ref, scope, place, complain);
  }
  for (const input of rule.inputs) {
    const mayMiss = input.optional === true || ('default' in input && input.default !== undefined);
    if (mayMiss || input.name in working.given) continue;
    complain(
      [...path, 'given'],
      `The rule "${rule.name}" needs "${input.name}": ${input.meaning}.`,
    );
  }
}

function belowSentence(id: string, used: string): string {
  return id === used
    ? `The working "${id}" cannot use itself. Take its value from somewhere else.`
    : `"${used}" stands below "${id}". Workings are done from top to bottom: move "${used}" above.`;
}

function checkRuleInput(
  input: Rule['inputs'][number],
  ref: ValueRef,
  scope: Scope,
  path: Path,
  complain: Complain,
): void {
  if (input.kind === 'number') checkRef(ref, { quantity: input.quantity }, scope, path, complain);
  else if (input.kind === 'choice') checkRef(ref, { words: input.options }, scope, path, complain);
  else {
    const meaning = meaningOf(ref, scope);
    if (typeof meaning === 'string') complain(path, meaning);
    else if (meaning.kind !== 'unknown' && !suits(meaning, input)) {
      complain(
        path,
        `Expected ${input.kind === 'text' ? 'a word' : `a list of ${quantityTold(input.quantity)}`}, found ${told(meaning)}.`,
      );
    }
  }
}

function suits(
  meaning: Meaning,
  input: Extract<Rule['inputs'][number], { kind: 'text' | 'list' }>,
) {
  if (input.kind === 'text') return meaning.kind === 'word';
  return meaning.kind === 'list' && meaning.quantity === input.quantity;
}

/** Complains when the value is unknown or of another quantity than wanted. */
export function checkRef(
  ref: ValueRef,
  wanted: Wanted,
  scope: Scope,
  path: Path,
  complain: Complain,
): void {
  if ('is' in ref) {
    checkConstant(ref, wanted, path, complain);
    return;
  }
  const meaning = meaningOf(ref, scope);
  const wrong = typeof meaning === 'string' ? meaning : mismatch(meaning, wanted);
  if (wrong) complain(path, wrong);
}

function checkConstant(
  ref: Extract<ValueRef, { is: number }>,
  wanted: Wanted,
  path: Path,
  complain: Complain,
): void {
  if (wanted === 'number') {
    if (!quantities.some((quantity) => findUnit(ref.unit, quantity))) {
      complain(
        [...path, 'unit'],
        `"${ref.unit}" is not a unit that is known. Write one such as mm, rpm or mm/rev.`,
      );
    }
  } else if ('words' in wanted) {
    complain(path, `Expected one of: ${listed(wanted.words)}; found a number.`);
  } else if (!findUnit(ref.unit, wanted.quantity)) {
    complain(
      [...path, 'unit'],
      `"${ref.unit}" is not a unit of ${wanted.quantity}. Its units: ${listed(unitsOf(wanted.quantity))}.`,
    );
  }
}

function mismatch(meaning: Meaning, wanted: Wanted): string | undefined {
  if (meaning.kind === 'unknown') return undefined;
  if (wanted === 'number')
    return meaning.kind === 'number' ? undefined : `Expected a number, found ${told(meaning)}.`;
  if ('quantity' in wanted) {
    if (meaning.kind === 'number' && meaning.quantity === wanted.quantity) return undefined;
    return `Expected ${quantityTold(wanted.quantity)}, found ${told(meaning)}.`;
  }
  if (meaning.kind !== 'word')
    return `Expected one of: ${listed(wanted.words)}; found ${told(meaning)}.`;
  const strange = meaning.options?.find((option) => !wanted.words.includes(option));
  if (strange === undefined) return undefined;
  return `"${strange}" is not one of: ${listed(wanted.words, 20)}.${suggestion(strange, wanted.words)}`;
}

function told(meaning: Exclude<Meaning, { kind: 'unknown' }>): string {
  if (meaning.kind === 'word') return 'a word';
  return `${meaning.kind === 'list' ? 'a list of ' : ''}${quantityTold(meaning.quantity)}`;
}

/** "surfaceSpeed (m/min)": the unit says more than the name. */
function quantityTold(quantity: Quantity): string {
  return `${quantity} (${baseUnitOf(quantity) || 'a plain number'})`;
}
