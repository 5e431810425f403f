/** Jobs of a few steps on the tiny machine, and walks of them. */

import type { Job, StepPlan } from '../../src/flow/index.ts';
import { Frame } from '../../src/proof/frame.ts';
import { Ids } from '../../src/proof/ids.ts';
import { type JudgedStep, judgeStep } from '../../src/proof/judge-step.ts';
import { Live } from '../../src/proof/live.ts';
import { askedStates } from '../../src/proof/told-apart.ts';
import { KnownVariables, Variables } from '../../src/proof/variables.ts';
import { type Place, Walk } from '../../src/proof/walk.ts';
import { bigFlow } from './big-flow.ts';
import { jobOf } from './both-walks.ts';

export const mm = (is: number) => ({ is, unit: 'mm' });

export const step = (id: string, more: object) => ({
  id,
  title: id,
  say: 'Do it.',
  kind: 'tell',
  ...more,
});

export const check = (id: string, more: object = {}) =>
  step(id, { kind: 'check', facts: { motor: 'off' }, ...more });

export const gauge = (id: string, more: object = {}) => {
  const reading = { id: `${id}Size`, label: id, unit: 'mm', decimals: 2, min: mm(5), max: mm(40) };
  return step(id, { kind: 'measure', needs: { motor: 'off' }, reading, ...more });
};

export const cut = (id: string, rpm: number, more: object = {}) => {
  const needs = { motor: 'off', tool: 'clear', guard: 'closed' };
  return step(id, { kind: 'cut', needs, speed: { is: rpm, unit: 'rpm' }, ...more });
};

export function tinyJob(...steps: readonly object[]): Job {
  const job = jobOf({ ...(bigFlow(10) as object), gates: {}, steps });
  if (!job) throw new Error('The flow cannot be read.');
  return job;
}

export function planIn(job: Job, id: string): StepPlan {
  const plan = job.plans.get(id);
  if (!plan) throw new Error(`There is no step "${id}".`);
  return plan;
}

/** Frames of a job's steps; of several jobs, with the same ids they can be held against each other. */
export function framesOf(job: Job, ids = new Ids()): (id: string) => Frame {
  const variables = new Variables(job, new KnownVariables(job.flow.kind, askedStates(job)));
  const framing = { job, variables, live: new Live(job, variables), ids };
  return (id) => new Frame(planIn(job, id), 0, framing);
}

export function walked(...steps: readonly object[]): Walk {
  const walk = new Walk(tinyJob(...steps));
  walk.run();
  return walk;
}

export function judgedIn(walk: Walk): ReadonlyMap<string, JudgedStep> {
  return new Map(
    [...walk.stands].map(([id, { walk: inside }]) => [
      id,
      judgeStep(inside, walk.rowsIn(id), walk),
    ]),
  );
}

/** The state of a step that stands, such as "open". */
export function placeIn(walk: Walk, id: string, state: string): Place {
  const inner = JSON.stringify(state);
  const spots = [...walk.rowsIn(id).keys()];
  const spot = spots.find((one) => one.rests && one.inner === inner);
  if (!spot) throw new Error(`Nothing stands at "${state}" of "${id}".`);
  return walk.place(id, spot);
}
