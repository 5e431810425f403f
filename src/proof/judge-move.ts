/** What the claims say of one event: where it came from, and where it led. */

import {
  endStep,
  type FlowEvent,
  type FlowSnapshot,
  type Job,
  positionOf,
  type Step,
  stateOf,
  unknownState,
} from '../flow/index.ts';
import type { Broken } from './judge-state.ts';
import { tell } from './tell.ts';

/** What is wrong with a move, if anything. Facts are read one by one, and only after "back". */
export function judgeMove(
  job: Job,
  before: FlowSnapshot,
  event: FlowEvent,
  after: FlowSnapshot,
): Broken | undefined {
  const from = positionOf(before);
  const to = positionOf(after);
  if (event.type === 'stop' || event.type === 'hold' || event.type === 'interrupted') {
    if (to.phase === 'hold' && to.step === from.step) return undefined;
    return {
      claim: 'FORMAT-STOP',
      message: tell(job)`"${event.type}" leads to ${to.step}, ${to.phase}.`,
    };
  }
  if (from.phase === 'hold' && to.step !== from.step) {
    const message = tell(job)`Held in step "${from.step}", it goes on in "${to.step}".`;
    return { claim: 'FORMAT-HOLD', message };
  }
  return event.type === 'back' && to.step !== from.step
    ? judgeBack(job, from.step, after)
    : undefined;
}

/** After "back", what the steps between have said is not believed, but for what the step come to begins with. */
function judgeBack(job: Job, from: string, after: FlowSnapshot): Broken | undefined {
  const { step: to } = positionOf(after);
  const undone = undoneBetween(job, to, from);
  const begun = beginsOf(job.flow.steps.get(to));
  for (const step of undone) {
    for (const fact of factsSaidIn(job, step)) {
      const state = stateOf(after.context.facts, fact);
      if (state === unknownState || begun[fact] === state) continue;
      const message = tell(
        job,
      )`Back in step "${to}", it is still believed that ${fact} is ${state}.`;
      return { claim: 'FORMAT-BACK', message };
    }
    const reading = 'reading' in step ? step.reading.id : undefined;
    if (reading !== undefined && after.context.readings[reading] !== undefined) {
      return {
        claim: 'FORMAT-BACK',
        message: tell(job)`Back in step "${to}", "${reading}" is still kept.`,
      };
    }
  }
  return undefined;
}

/** Facts and readings that are undone by going back from one step to another; for telling steps of one kind apart. */
export function claimsUndone(job: Job, to: string, from: string): readonly string[] {
  const facts = undoneBetween(job, to, from).flatMap((step) => factsSaidIn(job, step));
  return [...new Set(facts)].sort();
}

export function beginsOf(step: Step | undefined): Readonly<Record<string, string>> {
  return step?.kind === 'do' ? step.begins : {};
}

/** Worked out here anew, and not asked of the plan that the chart was built from. */
function factsSaidIn(job: Job, step: Step): readonly string[] {
  const { power, tool, speed } = job.flow.kind.roles;
  if (step.kind === 'check') return Object.keys(step.facts);
  if (step.kind === 'do') return [...Object.keys(step.begins), ...Object.keys(step.ends)];
  if (step.kind === 'cut' || step.kind === 'passes') return [power.fact, tool.fact, speed.fact];
  return [];
}

const known = new WeakMap<Job, Map<string, readonly Step[]>>();

/** The steps on some way from `to` on to `from`, with both. */
function undoneBetween(job: Job, to: string, from: string): readonly Step[] {
  const cache = known.get(job) ?? new Map<string, readonly Step[]>();
  known.set(job, cache);
  const key = `${to} ${from}`;
  const old = cache.get(key);
  if (old) return old;
  const { targets, sources } = job.flow.graph;
  const after = reached(to, targets, from);
  const before = reached(from, sources, to);
  const ids = [...after].filter((id) => id !== endStep && before.has(id));
  const steps = ids.map((id) => job.flow.steps.get(id)).filter((step) => step !== undefined);
  cache.set(key, steps);
  return steps;
}

function reached(
  first: string,
  arrows: ReadonlyMap<string, readonly string[]>,
  stop: string,
): ReadonlySet<string> {
  const seen = new Set([first]);
  for (const id of seen) if (id !== stop) for (const end of arrows.get(id) ?? []) seen.add(end);
  return seen;
}
