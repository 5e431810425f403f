/**
 * Why a mutant that breaks no claim is harmless. Each excuse is a criterion that is looked up in the job, and names what
 * was found. A mutant without one is a hole: a claim is missing, or the flow says something that nobody needs.
 */

import type { Condition, Job, StepPlan } from '../flow/index.ts';
import { endStep } from '../flow/index.ts';
import { findPassedLimit } from './limit-mutants.ts';
import type { Mutant } from './mutants.ts';
import { askedStates } from './told-apart.ts';

/** One sentence, or nothing. `job` is the mutant's own. */
export function excuseFor(mutant: Mutant, job: Job): string {
  if (mutant.kind === 'limit') return limitExcuse(mutant, job);
  if (mutant.kind === 'remedy') return remedyExcuse(mutant, job);
  if (mutant.name.startsWith('moment')) return momentExcuse(mutant, job);
  if (mutant.name.startsWith('hands')) return handsExcuse(mutant, job);
  if (!mutant.fact) return '';
  if (mutant.name.startsWith('begins')) return begunExcuse(mutant, job);
  return askedExcuse(mutant, job);
}

/** The limit does not count with any numbers that may be put in, or another one says the same. */
function limitExcuse({ name, steps }: Mutant, job: Job): string {
  if (name.includes('of step')) return statedExcuse(steps, job);
  const { tried, passed } = findPassedLimit(job.flow, job.card, steps);
  if (tried === 0 || passed) return '';
  return `At none of ${tried} sets of numbers from the ends of what may be put in does the speed pass it on this machine.`;
}

function statedExcuse([id = '']: readonly string[], job: Job): string {
  const step = job.flow.steps.get(id);
  const working = step && 'speed' in step && 'working' in step.speed ? step.speed.working : '';
  return job.flow.scope.workings.get(working)?.given.workLimit
    ? `The speed of the step is worked out by "${working}", which is held to what the work allows itself.`
    : '';
}

function remedyExcuse({ fact, steps }: Mutant, job: Job): string {
  const own = job.flow.kind.facts.find(({ id }) => id === fact?.id)?.remedy;
  const asks = steps.every((id) => fact && fact.id in (job.plans.get(id)?.gate ?? {}));
  return own && asks
    ? `The step still asks for it, and the machine kind's own advice is told instead: "${own}"`
    : '';
}

/** A moment is a mark that only hazards look at: the chart of the step is the same without it. */
function momentExcuse({ name, steps: [step = ''] }: Mutant, job: Job): string {
  const moment = /"(.+?)"/.exec(name)?.[1] ?? '';
  const marked = job.flow.kind.hazards.filter(({ never }) => momentsIn(never).includes(moment));
  const gate = job.plans.get(step)?.gate ?? {};
  const facts = marked.flatMap(({ never }) => factsIn(never));
  const missing = facts.filter((fact) => !(fact in gate));
  if (missing.length > 0) return '';
  const looked = marked.map(({ id }) => id).join(', ');
  return marked.length === 0
    ? `A mark that no hazard of the ${job.flow.kind.id} looks at; what is asked stays the same.`
    : `A mark for ${looked} alone: the step still asks for ${[...new Set(facts)].join(', ')} itself.`;
}

/** Hands were in before, on every way, and what hands can undo has not been asked for since. */
function handsExcuse({ steps: [first = ''] }: Mutant, job: Job): string {
  const forgotten = job.flow.kind.facts.filter((fact) => fact.handsForget).map(({ id }) => id);
  const seen = new Set(job.flow.graph.sources.get(first));
  const before: string[] = [];
  for (const id of seen) {
    const plan = job.plans.get(id);
    if (!plan) continue;
    if (plan.hands || plan.step.kind === 'passes') before.push(id);
    else if (plan.powered || forgotten.some((fact) => fact in plan.gate)) return '';
    else for (const source of job.flow.graph.sources.get(id) ?? []) seen.add(source);
  }
  if (before.length === 0) return '';
  return `Hands were in just before (${fewOf(before)}), and ${forgotten.join(', ')} were not asked for since.`;
}

/** What is no longer asked here is asked by every step where a hazard looks at it. */
function askedExcuse({ fact }: Mutant, job: Job): string {
  if (!fact) return '';
  const counts = [...job.plans.values()].filter((plan) => countsIn(plan, fact.id, job));
  if (counts.length === 0 || !counts.every(({ gate }) => fact.id in gate)) return '';
  const names = counts.map(({ step }) => step.id);
  return `Every step where it can hurt asks about "${fact.id}" itself: ${fewOf(names)}.`;
}

/** What is no longer begun is asked anew before anything looks at it. */
function begunExcuse({ fact, steps: [first = ''] }: Mutant, job: Job): string {
  if (!fact) return '';
  if (asksAnew(job.plans.get(first), fact.id)) {
    const told = askedStates(job).get(fact.id)?.has(fact.state) ?? false;
    if (told) return '';
    return `The same step asks for "${fact.id}" anew, and nothing tells "${fact.state}" from not knowing.`;
  }
  const askers = askersBehind(first, fact.id, job);
  if (!askers) return '';
  const where = askers.length > 0 ? `asked anew at ${fewOf(askers)}` : 'never asked again';
  return `"${fact.id}" is ${where} before anything looks at it.`;
}

/** The first steps on every way that ask for a fact anew; nothing where some step looks at it before. */
function askersBehind(first: string, fact: string, job: Job): readonly string[] | undefined {
  const seen = new Set(job.flow.graph.targets.get(first));
  const askers: string[] = [];
  for (const id of seen) {
    const plan = job.plans.get(id);
    if (!plan) continue;
    if (fact in plan.gate || countsIn(plan, fact, job)) return undefined;
    if (asksAnew(plan, fact)) askers.push(id);
    else for (const next of job.flow.graph.targets.get(id) ?? []) seen.add(next);
  }
  return askers;
}

function asksAnew(plan: StepPlan | undefined, fact: string): boolean {
  const step = plan?.step;
  if (step?.kind === 'check') return fact in step.facts;
  return step?.kind === 'do' && fact in step.ends;
}

/** True where a hazard could be met in this step if the fact were not so. */
function countsIn(plan: StepPlan, fact: string, job: Job): boolean {
  return job.flow.kind.hazards.some(
    ({ never }) =>
      factsIn(never).includes(fact) && momentsIn(never).some((moment) => isIn(plan, moment)),
  );
}

function isIn(plan: StepPlan, moment: string): boolean {
  const { step, powered, hands, targets } = plan;
  if (moment === 'start' || moment === 'turning' || moment === 'cutting') return powered;
  if (moment === 'hands') return hands || step.kind === 'passes';
  if (moment === 'measuring') return 'reading' in step;
  // A powered step is left only when what turns was said to stand still.
  if (moment === 'end') return targets.includes(endStep) && !powered;
  if (moment.startsWith(asking)) return asksAnew(plan, moment.slice(asking.length));
  return step.moment === moment;
}

const asking = 'asking ';

function momentsIn(condition: Condition): readonly string[] {
  if ('all' in condition) return condition.all.flatMap(momentsIn);
  if ('any' in condition) return condition.any.flatMap(momentsIn);
  if ('asking' in condition) return [`${asking}${condition.asking}`];
  return 'moment' in condition ? [condition.moment] : [];
}

/** Facts that hurt when they are not so. */
function factsIn(condition: Condition): readonly string[] {
  if ('all' in condition) return condition.all.flatMap(factsIn);
  if ('any' in condition) return condition.any.flatMap(factsIn);
  return 'fact' in condition && 'not' in condition ? [condition.fact] : [];
}

const named = 4;

function fewOf(names: readonly string[]): string {
  const rest = names.length - named;
  return `${names.slice(0, named).join(', ')}${rest > 0 ? ` and ${rest} more` : ''}`;
}
