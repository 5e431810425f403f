/** The next pass of a passes step: what is left, how deep, and what the cross dial must read. */

import { answerRule, findRule, type RuleAnswer } from '../trade/index.ts';
import type { PassState } from './events.ts';
import type { StepOf } from './flow-shape.ts';
import type { Numbers, Readings } from './numbers.ts';

export interface NextPass {
  /** The dial's reading for the cut, in mm from the zero set at the first size. */
  readonly dial: number;
  /** How far the dial goes on from where it was, in mm as the dial counts. */
  readonly advance: number;
  /** Left to take off the diameter, in mm. */
  readonly left: number;
  readonly depthASide: number;
  readonly diameterAfter: number;
  readonly last: boolean;
  readonly answer: RuleAnswer;
}

export interface PassWorld {
  readonly numbers: Numbers;
  readonly card: { readonly crossReads: 'diameter' | 'radius'; readonly crossDivision: number };
}

/** Works out the pass that follows `state`. With nothing left, or no rule, the dial stays where it is. */
export function nextPass(
  step: StepOf<'passes'>,
  state: PassState,
  readings: Readings,
  { numbers, card }: PassWorld,
): NextPass {
  const number = (ref: Parameters<Numbers['number']>[0]) => numbers.number(ref, readings) ?? 0;
  const finish = number(step.finish);
  const sign = step.side === 'outside' ? 1 : -1;
  const left = sign * (state.size - finish);
  const answer = passAnswer(
    state.size,
    finish,
    number(step.deepest),
    number(step.finishAllowance),
    step.side,
    card,
  );
  if (!answer.ok) {
    return {
      dial: state.dial,
      advance: 0,
      left,
      depthASide: 0,
      diameterAfter: state.size,
      last: false,
      answer,
    };
  }
  return {
    dial: state.dial + answer.value,
    advance: answer.value,
    left,
    depthASide: part(answer, 'depthASide'),
    diameterAfter: part(answer, 'diameterAfter'),
    last: part(answer, 'lastPass') === 1,
    answer,
  };
}

function passAnswer(
  measured: number,
  finishDiameter: number,
  deepestCut: number,
  finishAllowance: number,
  side: 'outside' | 'inside',
  card: PassWorld['card'],
): RuleAnswer {
  const rule = findRule('next-pass');
  if (!rule) return { ok: false, fault: 'The trade has no rule "next-pass".' };
  return answerRule(rule, {
    measured,
    finishDiameter,
    deepestCut,
    finishAllowance,
    dialReads: card.crossReads,
    graduation: card.crossDivision,
    direction: side,
  });
}

function part(answer: Extract<RuleAnswer, { ok: true }>, name: string): number {
  const value = answer.parts?.[name]?.value;
  return typeof value === 'number' ? value : 0;
}
