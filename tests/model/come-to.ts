/** For each step, one way of coming to it: found once, by following what the prover's plain events give. */

import {
  beginJob,
  endStep,
  type FlowEvent,
  type FlowSnapshot,
  type Job,
  positionOf,
  stepJob,
} from '../../src/flow/index.ts';
import { eventsOf } from './step-model.ts';

export interface Come {
  readonly snapshot: FlowSnapshot;
  readonly events: readonly FlowEvent[];
}

/** By step: the first snapshot in it, and the words that lead there. Breadth first over steps, greedy within one. */
export function comeToAll(job: Job): ReadonlyMap<string, Come> {
  const found = new Map<string, Come>();
  const first = beginJob(job);
  const open: Come[] = [{ snapshot: first, events: [] }];
  found.set(positionOf(first).step, { snapshot: first, events: [] });
  for (const come of open) {
    for (const next of leave(job, come)) {
      const { step } = positionOf(next.snapshot);
      if (found.has(step) || step === endStep) continue;
      found.set(step, next);
      open.push(next);
    }
  }
  return found;
}

/** Every step that can follow, each by the fewest words. */
function leave(job: Job, from: Come): readonly Come[] {
  const { step } = positionOf(from.snapshot);
  const seen = new Set<string>();
  const open: Come[] = [from];
  const left = new Map<string, Come>();
  for (const { snapshot, events } of open) {
    const key = JSON.stringify([snapshot.value, snapshot.context.facts, snapshot.context.passes]);
    if (seen.has(key) || seen.size > 400) continue;
    seen.add(key);
    for (const event of eventsOf(job, snapshot)) {
      if (event.type === 'back' || event.type === 'hold' || event.type === 'trouble') continue;
      const next = { snapshot: stepJob(job, snapshot, event), events: [...events, event] };
      const to = positionOf(next.snapshot).step;
      if (to === step) open.push(next);
      else if (!left.has(to)) left.set(to, next);
    }
  }
  return [...left.values()];
}
