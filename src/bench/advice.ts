/** Advice in a fault walk: one number is said, a trade rule makes another of it. The chart does not know it. Pure. */

import {
  formatOf,
  type Job,
  planAt,
  type SaidNumber,
  shownAs,
  type WalkItem,
  walkNow,
} from '../flow/index.ts';
import {
  answerRule,
  findRule,
  type Quantity,
  type Rule,
  type RuleValue,
  toBase,
} from '../trade/index.ts';
import { sayNumber } from '../words/index.ts';
import type { RunState } from './run-state.ts';

type Advice = NonNullable<WalkItem['advice']>;

/** The number that a walk asks for here, if it asks for one. */
export function adviceNumber({ job, snapshot }: Pick<RunState, 'job' | 'snapshot'>) {
  const item = walkNow(job, snapshot)?.item;
  const input = item?.advice && ruleInput(item.advice);
  if (!item?.advice || !input) return undefined;
  return numberOf(item.title, item.advice, input.quantity, job);
}

function ruleInput({ rule, input }: Advice) {
  const found = findRule(rule)?.inputs.find((one) => one.name === input);
  return found?.kind === 'number' ? found : undefined;
}

function numberOf(label: string, advice: Advice, quantity: Quantity, job: Job): SaidNumber {
  const { unit, decimals } = advice;
  const [min, max] = [advice.min, advice.max].map((is) => toBase(is, unit, quantity)) as [
    number,
    number,
  ];
  const format = formatOf(quantity, job.card.units, { unit, decimals });
  const inUnit = (value: number) => shownAs(value, quantity, format).value;
  const bound = (is: number) => ({ is, unit });
  return {
    reading: {
      id: 'advice',
      label,
      quantity,
      unit,
      decimals,
      min: bound(advice.min),
      max: bound(advice.max),
    },
    quantity,
    ...format,
    min: inUnit(min),
    max: inUnit(max),
  };
}

export interface Advised {
  readonly line: string;
  /** The working behind it, for "why that". */
  readonly why: string;
}

/** What the rule says to `base`, a number in the base unit of its quantity; a rule that refuses says why. */
export function advise({ job, snapshot }: RunState, base: number): Advised | undefined {
  const advice = walkNow(job, snapshot)?.item?.advice;
  const rule = advice && findRule(advice.rule, job.flow.language);
  if (!advice || !rule) return undefined;
  const answer = answerRule(rule, {
    ...givenTo(advice, rule, { job, snapshot }),
    [advice.input]: base,
  });
  if (!answer.ok) return { line: answer.fault, why: answer.fault };
  const { quantity } = rule.output;
  const { value, unit, decimals } = shownAs(
    Number(answer.value),
    quantity,
    formatOf(quantity, job.card.units),
  );
  const line = advice.say.replaceAll(
    '{answer}',
    sayNumber(value, unit, decimals, { language: job.flow.language }),
  );
  return { line, why: answer.working };
}

/** Values that the step has none of are left out: then the rule says what it needs. */
function givenTo(
  { given }: Advice,
  rule: Rule,
  { job, snapshot }: Pick<RunState, 'job' | 'snapshot'>,
): Readonly<Record<string, RuleValue>> {
  const step = planAt(job, snapshot)?.step;
  const powered = step?.kind === 'cut' || step?.kind === 'passes' ? step : undefined;
  const { readings } = snapshot.context;
  return Object.fromEntries(
    Object.entries(given).flatMap(([name, from]) => {
      const input = rule.inputs.find((one) => one.name === name);
      const quantity = input?.kind === 'number' ? input.quantity : undefined;
      const ref = 'step' in from ? powered?.[from.step] : from;
      const value = ref && job.numbers.value(ref, readings, quantity);
      return value === undefined ? [] : [[name, value] as const];
    }),
  );
}
