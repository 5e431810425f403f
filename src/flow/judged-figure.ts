/** What stands behind the verdict on a reading: the limits, the rule that judged it, and where the limits come from. */

import { sayIn, whyTexts } from '../texts/index.ts';
import { answerRule, findRule, type Quantity } from '../trade/index.ts';
import type { Job } from './compile.ts';
import { formatOf, shownAs } from './display.ts';
import { type Behind, behindOf, type ReadingsHeld, textsOf } from './figure-behind.ts';
import { type Figure, figureOf } from './figures.ts';
import { limitsOf } from './verdict.ts';

const sayWhy = ({ flow }: Pick<Job, 'flow'>) => sayIn(flow.language, whyTexts);

/** A reading of a step in base units, with its "why that?"; undefined where the step takes none. */
export function judgedFigure(
  job: Job,
  held: ReadingsHeld,
  stepId: string,
  value: number,
): Figure | undefined {
  const step = job.flow.steps.get(stepId);
  if (!step || !('reading' in step)) return undefined;
  const { reading } = step;
  const quantity = reading.quantity as Quantity;
  const format = formatOf(quantity, job.card.units, reading);
  const itself = {
    label: reading.label,
    ...textsOf(shownAs(value, quantity, format), job.flow.language),
  };
  const taken = behindOf(job, held, { reading: reading.id });
  const judged = judgedBehind(job, held, stepId, value);
  return { id: stepId, ...itself, ...taken, ...judged, given: [itself, ...(judged?.given ?? [])] };
}

function judgedBehind(
  job: Job,
  held: ReadingsHeld,
  stepId: string,
  reading: number,
): Behind | undefined {
  const step = job.flow.steps.get(stepId);
  const rule = findRule('judge-reading', job.flow.language);
  if (!rule || (step?.kind !== 'inspect' && step?.kind !== 'passes')) return undefined;
  const limits = limitsOf(step, job.numbers, held.context.readings);
  const answer = limits && answerRule(rule, { reading, ...limits, side: step.side });
  if (!answer?.ok) return undefined;
  const lower = figureOf(job, held, 'lower', sayWhy(job)('least'), step.lower);
  const upper = figureOf(job, held, 'upper', sayWhy(job)('most'), step.upper);
  const given = [lower, upper].filter((one) => one !== undefined);
  const allowed =
    lower && upper ? { allowed: sayWhy(job)('range', { low: lower.text, high: upper.text }) } : {};
  const sources = [...new Set([answer.source ?? rule.source, upper?.source ?? ''])];
  return {
    working: answer.working,
    given,
    formula: rule.formula,
    ...allowed,
    source: sources.filter((source) => source !== '').join('; '),
  };
}
