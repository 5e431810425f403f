/** A rule and its answer as plain data with units spelt out, for a list or a line of JSON. */

import type { Rule, RuleAnswer, RuleInput, WorkingPart } from './rule.ts';
import { baseUnitOf, unitsOf } from './units.ts';

type Plain = Readonly<Record<string, unknown>>;

/** What sixteen digits cannot hold is no part of the answer: 0.30000000000000004 is 0.3. */
function clean(value: number): number {
  return Number(value.toPrecision(15));
}

function cleaned(value: number | readonly number[]): number | readonly number[] {
  return typeof value === 'number' ? clean(value) : value.map(clean);
}

function describedInput(input: RuleInput): Plain {
  if (input.kind === 'choice' || input.kind === 'text') return { ...input };
  const { kind, name, quantity, ...rest } = input;
  return { kind, name, quantity, unit: baseUnitOf(quantity), units: unitsOf(quantity), ...rest };
}

/** The rule without its work: inputs and output with units. */
export function describeRule(rule: Rule): Plain {
  const { name, title, topic, output, formula, source, cautions } = rule;
  const unit = baseUnitOf(output.quantity);
  const inputs = rule.inputs.map(describedInput);
  return {
    name,
    title,
    topic,
    inputs,
    unit,
    output: { ...output, unit },
    formula,
    source,
    cautions,
  };
}

function describedPart(part: WorkingPart): Plain {
  return {
    value: cleaned(part.value),
    unit: baseUnitOf(part.quantity),
    quantity: part.quantity,
    meaning: part.meaning,
  };
}

/** An answer in base units: rule, value, unit, working, and what else there is. */
export function describeAnswer(rule: Rule, answer: Extract<RuleAnswer, { ok: true }>): Plain {
  const { value, working, ruledBy, word, source, parts } = answer;
  return {
    rule: rule.name,
    value: clean(value),
    unit: baseUnitOf(rule.output.quantity),
    working,
    ...(ruledBy === undefined ? {} : { ruledBy }),
    ...(word === undefined ? {} : { word }),
    ...(source === undefined ? {} : { source }),
    ...(parts === undefined
      ? {}
      : {
          parts: Object.fromEntries(
            Object.entries(parts).map(([name, part]) => [name, describedPart(part)]),
          ),
        }),
  };
}

function partLine(name: string, part: WorkingPart): string {
  const values = typeof part.value === 'number' ? [part.value] : part.value;
  const unit = baseUnitOf(part.quantity);
  const shown = values.map((value) => Number(value.toPrecision(6))).join(', ');
  return `  ${name}: ${shown} ${unit} (${part.meaning})`;
}

/** Answer, formula, working, limit, parts, source and cautions as lines of text. */
export function explainAnswer(rule: Rule, answer: Extract<RuleAnswer, { ok: true }>): string {
  const unit = baseUnitOf(rule.output.quantity);
  const parts = Object.entries(answer.parts ?? {});
  const lines = [
    rule.title,
    `Answer:  ${Number(answer.value.toPrecision(6))} ${unit} (${rule.output.meaning})`,
    ...(answer.word === undefined ? [] : [`Word:    ${answer.word}`]),
    `Formula: ${rule.formula}`,
    `Working: ${answer.working}`,
    ...(answer.ruledBy === undefined ? [] : [`Limit:   ${answer.ruledBy}`]),
    ...(parts.length === 0 ? [] : ['Parts:', ...parts.map(([name, part]) => partLine(name, part))]),
    `Source:  ${rule.source}`,
    ...(answer.source === undefined ? [] : [`         ${answer.source}`]),
    ...(rule.cautions.length === 0 ? [] : ['Mind:', ...rule.cautions.map((line) => `  ${line}`)]),
  ];
  return lines.join('\n');
}
