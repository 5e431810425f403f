/** A job whose chart was tampered with: what no flow file can do, since the compiler never makes it so. */

import { assign, createMachine } from 'xstate';
import type { Job } from '../../src/flow/index.ts';

/** One node of a chart's plan, as XState takes it. */
export interface Node {
  on?: Record<string, unknown>;
  always?: unknown;
  states?: Record<string, Node>;
}

/** The same job on a chart that `edit` has changed; guards and actions stay the job's own. */
export function withChart(job: Job, edit: (steps: Record<string, Node>) => void): Job {
  const config: unknown = JSON.parse(JSON.stringify(job.machine.config));
  edit((config as { readonly states: Record<string, Node> }).states);
  const machine: unknown = createMachine(config as Parameters<typeof createMachine>[0]).provide(
    job.machine.implementations as object,
  );
  return { ...job, machine: machine as Job['machine'] };
}

/** The same chart with guards that always answer alike. */
export function withGuards(job: Job, guards: Readonly<Record<string, boolean>>): Job {
  const made = Object.entries(guards).map(([name, answer]) => [name, () => answer]);
  const machine: unknown = job.machine.provide({ guards: Object.fromEntries(made) as object });
  return { ...job, machine: machine as Job['machine'] };
}

/** The same chart with an action that does nothing. */
export function withoutAction(job: Job, action: string): Job {
  const idle = assign(() => ({}));
  const machine: unknown = job.machine.provide({ actions: { [action]: idle } as object });
  return { ...job, machine: machine as Job['machine'] };
}

/** The same job in which a step says something else. */
export function saying(job: Job, step: string, say: string): Job {
  const plan = job.plans.get(step);
  if (!plan) return job;
  const changed = { ...plan.step, say };
  const plans = new Map(job.plans).set(step, { ...plan, step: changed });
  const steps = new Map(job.flow.steps).set(step, changed);
  return { ...job, plans, flow: { ...job.flow, steps } };
}
