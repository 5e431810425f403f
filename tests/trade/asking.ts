/** A little language for tests: numberOf('drill-point', { diameter: 10 }). */

import { answerRule, findRule, type RuleAnswer, type RuleValues } from '../../src/trade/index.ts';

type Answered = Extract<RuleAnswer, { readonly ok: true }>;

export function answerOf(name: string, values: RuleValues): RuleAnswer {
  const rule = findRule(name);
  if (rule === undefined) throw new Error(`no rule ${name}`);
  return answerRule(rule, values);
}

/** The answer, which must be one. */
export function given(name: string, values: RuleValues): Answered {
  const answer = answerOf(name, values);
  if (!answer.ok) throw new Error(`${name}: ${answer.fault}`);
  return answer;
}

export function numberOf(name: string, values: RuleValues): number {
  return given(name, values).value;
}

export function partOf(name: string, part: string, values: RuleValues): number {
  const value = given(name, values).parts?.[part]?.value;
  if (typeof value !== 'number') throw new Error(`${name} has no number ${part}`);
  return value;
}

/** The fault, which must be one. */
export function faultOf(name: string, values: RuleValues): string {
  const answer = answerOf(name, values);
  if (answer.ok) throw new Error(`${name} answered ${answer.value}`);
  return answer.fault;
}
