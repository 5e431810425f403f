/** What stands behind a figure: the numbers put in, the formula, the limit that ruled, and where it comes from. */

import { type Language, optionText } from '../texts/index.ts';
import { findRule, type Quantity, type RuleInput } from '../trade/index.ts';
import { sayNumber, showNumber } from '../words/index.ts';
import { behindTaken } from './behind-taken.ts';
import type { Job } from './compile.ts';
import { displayOf, formatOf, type Shown, shownAs } from './display.ts';
import type { Readings } from './numbers.ts';
import type { ValueRef } from './words-shape.ts';

/** What a figure is worked out from: a job before its run has these as well. */
export type FigureWorld = Pick<Job, 'flow' | 'card' | 'numbers'>;

/** The readings taken so far; a snapshot holds them. */
export interface ReadingsHeld {
  readonly context: { readonly readings: Readings };
}

/** A value that went into a working, under the name the flow gives it. */
export interface Given {
  readonly label: string;
  readonly text: string;
  readonly spoken: string;
}

export interface Behind {
  /** One line with the numbers put in, or where the number was taken from. */
  readonly working: string;
  readonly given: readonly Given[];
  readonly formula: string;
  /** The limit that ruled, where one did. */
  readonly ruledBy?: string;
  /** What the number may be, where that is known: "10 mm to 60 mm". */
  readonly allowed?: string;
  readonly source: string;
}

/** What stands behind any value of a flow; undefined while it cannot be worked out. */
export function behindOf(job: FigureWorld, held: ReadingsHeld, ref: ValueRef): Behind | undefined {
  if ('working' in ref) return behindWorking(job, held, ref.working);
  const value = job.numbers.value(ref, held.context.readings);
  const itself = givenOf(job, held, ref, value);
  return { ...behindTaken(job, held, ref), given: itself ? [itself] : [] };
}

function behindWorking(job: FigureWorld, held: ReadingsHeld, id: string): Behind | undefined {
  const { readings } = held.context;
  const answer = job.numbers.working(id, readings);
  const file = job.flow.scope.workings.get(id);
  const rule = file && findRule(file.rule, job.flow.language);
  if (!answer.ok || !file || !rule) return undefined;
  const given = Object.entries(file.given).flatMap(([name, ref]) => {
    const input = rule.inputs.find((one) => one.name === name);
    if (!input || limits.has(name)) return [];
    const value = job.numbers.value(ref, readings, quantityOf(input));
    return givenOf(job, held, ref, value, input) ?? [];
  });
  return {
    working: answer.working,
    given,
    formula: rule.formula,
    ...(answer.ruledBy === undefined ? {} : { ruledBy: answer.ruledBy }),
    source: answer.source ?? rule.source,
  };
}

/** Limits are told when they rule, not as what a number comes from. */
const limits: ReadonlySet<string> = new Set(['chuckLimit', 'cardLimit', 'workLimit', 'motor']);

function quantityOf(input: RuleInput | undefined): Quantity | undefined {
  return input?.kind === 'number' ? input.quantity : undefined;
}

/** Lists of the card are too long to be read out; the working names what came of them. */
function givenOf(
  job: FigureWorld,
  { context }: ReadingsHeld,
  ref: ValueRef,
  value: unknown,
  input?: RuleInput,
): Given | undefined {
  const label = labelOf(job, ref) ?? input?.meaning ?? nameOf(ref);
  if (typeof value === 'string') {
    const text = optionText(job.flow.language, value);
    return { label, text, spoken: text };
  }
  const quantity = quantityOf(input) ?? displayOf(ref, job.flow, job.card.units)?.quantity;
  if (typeof value !== 'number' || quantity === undefined) return undefined;
  const taken = job.numbers.number(ref, context.readings, quantity) ?? value;
  return { label, ...textsOf(shownHere(job, ref, taken, quantity), job.flow.language) };
}

/** A field of the card or a constant, as people call it: "cross division". */
function nameOf(ref: ValueRef): string {
  const name = 'card' in ref ? ref.card : 'value';
  return name.replace(/([a-z])([A-Z])/g, '$1 $2').toLowerCase();
}

function shownHere(job: FigureWorld, ref: ValueRef, value: number, quantity: Quantity): Shown {
  const { units } = job.card;
  const format = displayOf(ref, job.flow, units)?.format ?? formatOf(quantity, units);
  return shownAs(value, quantity, format);
}

export function textsOf(shown: Shown, language: Language): Pick<Given, 'text' | 'spoken'> {
  return {
    text: showNumber(shown.value, shown.unit, shown.decimals, language),
    spoken: sayNumber(shown.value, shown.unit, shown.decimals, { language }),
  };
}

/** What the flow calls a value; nothing for words, constants and fields of the card. */
export function labelOf({ flow: { scope } }: Pick<Job, 'flow'>, ref: ValueRef): string | undefined {
  if ('input' in ref) return scope.inputs.get(ref.input)?.label;
  if ('reading' in ref) return scope.readings.get(ref.reading)?.reading.label;
  return 'working' in ref ? scope.workings.get(ref.working)?.label : undefined;
}
