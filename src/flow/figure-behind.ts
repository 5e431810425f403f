/** What stands behind a figure: the numbers put in, the formula, the limit that ruled, and where it comes from. */

import { findRule, type Quantity, type RuleInput } from '../trade/index.ts';
import { sayNumber, showNumber } from '../words/index.ts';
import type { Job } from './compile.ts';
import { displayOf, formatOf, type Shown, shownAs } from './display.ts';
import type { FlowSnapshot } from './position.ts';
import type { ValueRef } from './words-shape.ts';

/** A value that went into a working, under the name the flow gives it. */
export interface Given {
  readonly label: string;
  readonly text: string;
  readonly spoken: string;
}

export interface Behind {
  /** One line with the numbers put in, or where the number was taken from. */
  readonly working: string;
  readonly given?: readonly Given[];
  readonly formula?: string;
  readonly ruledBy?: string;
  readonly source: string;
}

export function behindOf(job: Job, snapshot: FlowSnapshot, ref: ValueRef): Behind | undefined {
  if ('working' in ref) return behindWorking(job, snapshot, ref.working);
  if ('input' in ref)
    return { working: 'as given', source: `${labelOf(job, ref)}, chosen for this run` };
  if ('reading' in ref) return { working: 'as measured', source: 'your reading' };
  if ('card' in ref) return { working: 'as on the machine card', source: job.card.title };
  return { working: 'as the flow sets it', source: `the flow "${job.flow.file.title}"` };
}

function behindWorking(job: Job, snapshot: FlowSnapshot, id: string): Behind | undefined {
  const answer = job.numbers.working(id, snapshot.context.readings);
  const file = job.flow.scope.workings.get(id);
  const rule = file && findRule(file.rule);
  if (!answer.ok || !file || !rule) return undefined;
  const given = Object.entries(file.given).flatMap(([name, ref]) => {
    const input = rule.inputs.find((one) => one.name === name);
    const one = input && !limits.has(name) && givenOf(job, snapshot, ref, input);
    return one ? [one] : [];
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

function givenOf(
  job: Job,
  { context }: FlowSnapshot,
  ref: ValueRef,
  input: RuleInput,
): Given | undefined {
  const quantity = input.kind === 'number' ? input.quantity : undefined;
  const value = job.numbers.value(ref, context.readings, quantity);
  const label = labelOf(job, ref) ?? input.meaning;
  if (typeof value === 'string') {
    const text = value.replaceAll('-', ' ');
    return { label, text, spoken: text };
  }
  if (typeof value !== 'number' || quantity === undefined) return undefined;
  return { label, ...textsOf(shownHere(job, ref, value, quantity)) };
}

function shownHere(job: Job, ref: ValueRef, value: number, quantity: Quantity): Shown {
  const { units } = job.card;
  const format = displayOf(ref, job.flow, units)?.format ?? formatOf(quantity, units);
  return shownAs(value, quantity, format);
}

export function textsOf(shown: Shown): Pick<Given, 'text' | 'spoken'> {
  return {
    text: showNumber(shown.value, shown.unit, shown.decimals),
    spoken: sayNumber(shown.value, shown.unit, shown.decimals),
  };
}

/** What the flow calls a value; nothing for words, constants and fields of the card. */
function labelOf({ flow: { scope } }: Job, ref: ValueRef): string | undefined {
  if ('input' in ref) return scope.inputs.get(ref.input)?.label;
  if ('reading' in ref) return scope.readings.get(ref.reading)?.reading.label;
  return 'working' in ref ? scope.workings.get(ref.working)?.label : undefined;
}
