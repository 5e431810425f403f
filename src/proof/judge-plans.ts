/** What the claims say of each step as it is written: these need no walk, and so have no path. */

import { endStep, type Job, releaseFact, type StepPlan } from '../flow/index.ts';
import { midSentence } from '../texts/index.ts';
import type { BrokenStep, Way } from './judge-graph.ts';
import { judgeKind } from './judge-kind.ts';
import { tell } from './tell.ts';

/** Every step that breaks a claim by the way it is written. */
export function judgePlans(job: Job): readonly BrokenStep[] {
  const ofSteps = [...job.plans.values()].flatMap((plan) => [
    ...judgeOwnAsk(job, plan),
    ...judgeLost(job, plan),
    ...judgeRework(job, plan),
  ]);
  return [...ofSteps, ...judgeKind(job)];
}

/** Of the steps that the shop wants an instructor to release, those that open without one. */
export function judgeReleases(job: Job, wanted: readonly string[]): readonly BrokenStep[] {
  return wanted.flatMap((id) => {
    const plan = job.plans.get(id);
    if (!plan || releaseFact in plan.gate) return [];
    const message = tell(
      job,
    )`"${plan.step.title}" begins without an instructor's release, and it is to wait for one.`;
    return [{ claim: 'FORMAT-RELEASE', step: id, message }];
  });
}

/** Proofs of one step must not lean on what another one happens to ask: flows are edited step by step. */
function judgeOwnAsk(job: Job, plan: StepPlan): readonly BrokenStep[] {
  const { power } = job.flow.kind.roles;
  const { step, gate, targets, powered, hands } = plan;
  const asked = { ...gate, ...(step.kind === 'check' ? step.facts : {}) };
  const leaves = targets.includes(endStep);
  // A cut is over only when the power is reported off; its gate is another claim's.
  if (powered || !(hands || leaves) || asked[power.fact] === power.off) return [];
  const why = hands ? tell(job)`Hands go in` : tell(job)`The job ends after this step`;
  const name = job.flow.kind.facts.find(({ id }) => id === power.fact)?.label ?? power.fact;
  const message = tell(
    job,
  )`${why}, and the step itself does not ask: ${midSentence(job.flow.language, name)} ${power.off}.`;
  return [{ claim: 'FORMAT-OWN-ASK', step: step.id, message }];
}

function judgeLost(job: Job, { step }: StepPlan): readonly BrokenStep[] {
  if (step.kind !== 'inspect' && step.kind !== 'passes') return [];
  const to = job.plans.get(step.lost);
  if (!to || (!to.powered && to.step.id !== step.id)) return [];
  const message = tell(
    job,
  )`A lost piece leads straight to "${to.step.title}", as if it could still be made good.`;
  return [{ claim: 'FORMAT-LOST', step: step.id, message }];
}

function judgeRework(job: Job, { step }: StepPlan): readonly BrokenStep[] {
  if (step.kind !== 'inspect' || step.rework !== step.id) return [];
  const message = tell(
    job,
  )`"${step.title}" judges the same size again, and nothing makes it good in between.`;
  return [{ claim: 'FORMAT-REWORK', step: step.id, message }];
}

/** Steps that name themselves as what follows: a walk that stays in one step does not show them as ways. */
export function waysIntoItself(job: Job): readonly Way[] {
  return [...job.plans.values()]
    .filter(({ step, targets }) => targets.includes(step.id))
    .map(({ step: { id } }) => ({ from: id, to: id, lost: false }));
}
