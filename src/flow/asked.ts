/** The facts that are asked for now, and how to answer each: found by trying the chart, never by a second list. */

import type { Job } from './compile.ts';
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

/** Losses that can be reported here, of facts that are believed and that this step stands on. */
export function reportable(job: Job, snapshot: FlowSnapshot): readonly FactAnswer[] {
  const plan = planAt(job, snapshot);
  const inForce = new Set([...Object.keys(plan?.gate ?? {}), job.flow.kind.roles.power.fact]);
  return answers(job, snapshot).filter(
    ({ fact, state }) =>
      isReport(job, snapshot, fact, state) &&
      inForce.has(fact.id) &&
      stateOf(snapshot.context.facts, fact.id) !== 'unknown',
  );
}

function answers(job: Job, snapshot: FlowSnapshot): readonly FactAnswer[] {
  return job.flow.kind.facts.flatMap((fact) =>
    fact.states
      .filter((state) => accepts(snapshot, { type: 'fact', fact: fact.id, state: state.id }))
      .map((state) => ({ fact, state })),
  );
}

/** A loss that nobody asked for. Only at the start is "running" the answer that is waited for. */
function isReport(job: Job, snapshot: FlowSnapshot, fact: Fact, state: FactState): boolean {
  if (!state.loss) return false;
  const { power } = job.flow.kind.roles;
  const starting = positionOf(snapshot).phase === 'start';
  return !(starting && fact.id === power.fact && state.id === power.on);
}
