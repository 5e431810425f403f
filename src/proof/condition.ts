/** Judges the condition of a hazard at one snapshot. */

import {
  type Condition,
  endStep,
  type FlowSnapshot,
  type Job,
  planAt,
  positionOf,
  type Readings,
  type SpeedLimit,
  type Step,
  stateOf,
} from '../flow/index.ts';

/** True where the condition holds. A fact that is not known is in none of its states. */
export function isSo(condition: Condition, job: Job, snapshot: FlowSnapshot): boolean {
  if ('all' in condition) return condition.all.every((one) => isSo(one, job, snapshot));
  if ('any' in condition) return condition.any.some((one) => isSo(one, job, snapshot));
  if ('moment' in condition) return isMoment(condition.moment, snapshot);
  if ('asking' in condition) return isAsking(condition.asking, job, snapshot);
  if ('speedAbove' in condition) return isAbove(condition.speedAbove, job, snapshot);
  const state = stateOf(snapshot.context.facts, condition.fact);
  return 'is' in condition ? state === condition.is : state !== condition.not;
}

/** True where the condition holds for no facts at all, at a place where this snapshot stands. */
export function isRuledOut(condition: Condition, job: Job, at: FlowSnapshot): boolean {
  if ('all' in condition) return condition.all.some((one) => isRuledOut(one, job, at));
  if ('any' in condition) return condition.any.every((one) => isRuledOut(one, job, at));
  if ('moment' in condition) return !isMoment(condition.moment, at);
  return 'asking' in condition && !isAsking(condition.asking, job, at);
}

/** Moments are the tags of the chart's states; the end is one as well. */
function isMoment(moment: string, snapshot: FlowSnapshot): boolean {
  if (moment === 'end') return positionOf(snapshot).step === endStep;
  return snapshot.tags.has(moment);
}

function isAsking(fact: string, job: Job, snapshot: FlowSnapshot): boolean {
  if (positionOf(snapshot).phase !== 'open') return false;
  const step = planAt(job, snapshot)?.step;
  if (step?.kind === 'check') return fact in step.facts;
  return step?.kind === 'do' && fact in step.ends;
}

function isAbove(limit: SpeedLimit, job: Job, snapshot: FlowSnapshot): boolean {
  const step = planAt(job, snapshot)?.step;
  return step !== undefined && runsAbove(limit, job, step, snapshot.context.readings);
}

/** True where the speed of the step is higher than the limit. */
export function runsAbove(limit: SpeedLimit, job: Job, step: Step, readings: Readings): boolean {
  if (!('speed' in step)) return false;
  const speed = job.numbers.number(step.speed, readings);
  if (speed === undefined) return false;
  if (limit !== 'workLimit') {
    const most = job.card.values[limit];
    return typeof most === 'number' && speed > most;
  }
  if (!step.workLimit) return false;
  const most = job.numbers.number(step.workLimit, readings);
  // A limit that is stated and cannot be worked out is no limit that is kept.
  return most === undefined || speed > most;
}
