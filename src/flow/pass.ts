/** The next pass of a passes step: what is left, how deep, and what the cross dial must read. */

import { figureIn, type Language, sayIn, whyTexts } from '../texts/index.ts';
import { answerRule, findRule, type RuleAnswer, type RuleValues } from '../trade/index.ts';
import type { PassState } from './events.ts';
import type { StepOf } from './flow-shape.ts';
import type { Numbers, Readings } from './numbers.ts';
import { judge, limitsOf, type Verdict } from './verdict.ts';

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
  const asked = {
    measured: state.size,
    finishDiameter: finish,
    deepestCut: number(step.deepest),
    finishAllowance: number(step.finishAllowance),
    dialReads: card.crossReads,
    direction: step.side,
  };
  const answer = passAnswer(asked, card.crossDivision, numbers.language);
  if (!answer.ok) return { ...standing(state), left, answer };
  const limits = limitsOf(step, numbers, readings);
  const rounded = cutOf(answer);
  const cut = reaching(rounded, step.side, card, (size) =>
    limits ? judge(size, limits, step.side) : 'within',
  );
  return {
    ...cut,
    dial: state.dial + cut.advance,
    left,
    answer: cut === rounded ? answer : onward(answer, cut, numbers.language),
  };
}

interface Cut {
  readonly advance: number;
  readonly depthASide: number;
  readonly diameterAfter: number;
  readonly last: boolean;
}

function standing({ size, dial }: PassState): Cut & { readonly dial: number } {
  return { dial, advance: 0, depthASide: 0, diameterAfter: size, last: false };
}

function cutOf(answer: Extract<RuleAnswer, { ok: true }>): Cut {
  const part = (name: string): number => {
    const value = answer.parts?.[name]?.value;
    return typeof value === 'number' ? value : 0;
  };
  return {
    advance: answer.value,
    depthASide: part('depthASide'),
    diameterAfter: part('diameterAfter'),
    last: part('lastPass') === 1,
  };
}

/**
 * The rule rounds down to a division, so a coarse dial can stop short of the limits and then ask for a cut of
 * nothing for ever. Where one division more, or half of one split by eye, lands within, that is the last cut.
 * (Common practice, no source.)
 */
function reaching(
  cut: Cut,
  side: 'outside' | 'inside',
  card: PassWorld['card'],
  verdict: (size: number) => Verdict,
): Cut {
  const roughing = cut.advance > 0 && !cut.last;
  if (roughing || verdict(cut.diameterAfter) !== 'rework') return cut;
  const further = [card.crossDivision, card.crossDivision / 2].map((more): Cut => {
    const depth = card.crossReads === 'diameter' ? more / 2 : more;
    return {
      advance: cut.advance + more,
      depthASide: cut.depthASide + depth,
      diameterAfter: cut.diameterAfter + (side === 'outside' ? -2 : 2) * depth,
      last: true,
    };
  });
  return further.find((one) => verdict(one.diameterAfter) === 'within') ?? cut;
}

type Good = Extract<RuleAnswer, { ok: true }>;

function onward(answer: Good, { advance, diameterAfter }: Cut, language: Language): Good {
  const mm = (value: number) => figureIn(language, String(Number(value.toFixed(4))));
  const { working } = answer;
  const told = { working, dial: mm(advance), size: mm(diameterAfter) };
  return { ...answer, working: sayIn(language, whyTexts)('onward', told) };
}

function passAnswer(values: RuleValues, graduation: number, language: Language): RuleAnswer {
  const rule = findRule('next-pass', language);
  if (!rule) return { ok: false, fault: 'The trade has no rule "next-pass".' };
  return answerRule(rule, { ...values, graduation });
}
