/** Where a snapshot of a flow's chart stands, read from the chart itself. */

import { initialTransition, type SnapshotFrom, transition } from 'xstate';
import type { FlowMachine, Job } from './compile.ts';
import type { FlowEvent } from './events.ts';
import { endStep } from './step-graph.ts';
import type { StepPlan } from './step-plan.ts';

export type FlowSnapshot = SnapshotFrom<FlowMachine>;

export type Phase =
  | 'gate'
  | 'open'
  | 'dial'
  | 'start'
  | 'cutting'
  | 'stopping'
  | 'measure'
  | 'hold'
  | 'walk'
  | 'end';

export interface Position {
  /** The step's id, or "end". */
  readonly step: string;
  readonly phase: Phase;
  readonly walk?: { readonly id: string; readonly item: string };
}

export function positionOf(snapshot: FlowSnapshot): Position {
  const value = snapshot.value as string | Record<string, string | Record<string, string>>;
  if (typeof value === 'string') return { step: value, phase: 'end' };
  const [step, inner] = Object.entries(value)[0] ?? [endStep, endStep];
  if (typeof inner === 'string') return { step, phase: inner as Phase };
  const [id, item] = Object.entries(inner)[0] ?? ['', ''];
  return { step, phase: 'walk', walk: { id, item } };
}

/** The plan of the step a snapshot stands in; none at the end. */
export function planAt(job: Job, snapshot: FlowSnapshot): StepPlan | undefined {
  return job.plans.get(positionOf(snapshot).step);
}

/** The first snapshot of a job. */
export function beginJob(job: Job): FlowSnapshot {
  return initialTransition(job.machine)[0];
}

/** One event, purely: the snapshot after it. A refused event gives back an equal snapshot. */
export function stepJob(job: Job, snapshot: FlowSnapshot, event: FlowEvent): FlowSnapshot {
  if (snapshot.status !== 'active') return snapshot;
  return transition(job.machine, snapshot, event)[0];
}

/** True when the chart would do something with the event. */
export function accepts(snapshot: FlowSnapshot, event: FlowEvent): boolean {
  return snapshot.status === 'active' && snapshot.can(event);
}
