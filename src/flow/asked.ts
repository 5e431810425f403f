/** The facts that are asked for now, and how to answer each: found by trying the chart, never by a second list. */

import type { Job } from './compile.ts';
import { unknownState } from './events.ts';
import { stateOf } from './facts.ts';
import type { Fact, FactState } from './kind-shape.ts';
import { accepts, type FlowSnapshot, planAt, positionOf } from './position.ts';

export interface FactAnswer {
  readonly fact: Fact;
  readonly state: FactState;
}

/** What the chart asks for here, in the order of the machine kind. */
export function askedFacts(job: Job, snapshot: FlowSnapshot): readonly FactAnswer[] {
  return answers(job, snapshot).filter(({ fact, state }) => !isReport(job, snapshot, fact, state));
}

/** The step that waits for an instructor's release now, if one does. */
export function releaseAwaited(job: Job, snapshot: FlowSnapshot): string | undefined {
  const step = planAt(job, snapshot)?.step;
  if (!step?.release) return undefined;
  return accepts(snapshot, { type: 'release' }) ? step.id : undefined;
}

/** Losses that can be reported here: of what turns always, else of facts that are believed and that this step stands on. */
export function reportable(job: Job, snapshot: FlowSnapshot): readonly FactAnswer[] {
  const plan = planAt(job, snapshot);
  const power = job.flow.kind.roles.power.fact;
  const inForce = new Set([...Object.keys(plan?.gate ?? {}), power]);
  return answers(job, snapshot).filter(
    ({ fact, state }) =>
      isReport(job, snapshot, fact, state) &&
      inForce.has(fact.id) &&
      (fact.id === power || stateOf(snapshot.context.facts, fact.id) !== unknownState),
  );
}

/** One snapshot is looked at many times: by the view, the said list, the figures, the voice. */
const tried = new WeakMap<FlowSnapshot, readonly FactAnswer[]>();

function answers(job: Job, snapshot: FlowSnapshot): readonly FactAnswer[] {
  const old = tried.get(snapshot);
  if (old) return old;
  const found = job.flow.kind.facts.flatMap((fact) =>
    fact.states
      .filter((state) => accepts(snapshot, { type: 'fact', fact: fact.id, state: state.id }))
      .map((state) => ({ fact, state })),
  );
  tried.set(snapshot, found);
  return found;
}

/** A loss that nobody asked for. Only at the start is "running" the answer that is waited for. */
function isReport(job: Job, snapshot: FlowSnapshot, fact: Fact, state: FactState): boolean {
  if (!state.loss) return false;
  const { power } = job.flow.kind.roles;
  const starting = positionOf(snapshot).phase === 'start';
  return !(starting && fact.id === power.fact && state.id === power.on);
}
