/** The said list of one step of a flow, found by walking the flow to that step. */

import type { ListenFor } from '../bench/ports.ts';
import {
  beginJob,
  compileJob,
  type FlowEvent,
  type FlowSnapshot,
  type Job,
  positionOf,
  saidList,
  stepJob,
} from '../flow/index.ts';
import { readFlowAt, shippedCards, shippedKinds } from './flow-files.ts';

type SaidAt = ListenFor | { readonly fault: string };

/** States looked at before giving up. */
const MOST_STATES = 20_000;

/** What may be said on entering the step, with the flow's own inputs on a machine that fits. */
export function saidAtStep(file: string, step: string): SaidAt {
  const reached = reachStep(file, step);
  return 'fault' in reached ? reached : listenAt(reached.job, reached.snapshot);
}

export type Reached =
  | { readonly job: Job; readonly snapshot: FlowSnapshot }
  | { readonly fault: string };

/** The flow, walked to the step by the shortest way. */
export function reachStep(file: string, step: string): Reached {
  const read = readFlowAt(file, shippedKinds());
  if (!read.ok) return { fault: read.faults.map((fault) => fault.message).join(' ') };
  const { flow } = read;
  if (!flow.file.steps.some(({ id }) => id === step)) {
    const steps = flow.file.steps.map(({ id }) => id).join(', ');
    return { fault: `The flow has no step "${step}". It has: ${steps}.` };
  }
  const compiled = shippedCards().map((card) => compileJob(flow, card));
  const fitting = compiled.filter((result) => result.ok).at(-1);
  if (!fitting) return { fault: compiled.flatMap((r) => (r.ok ? [] : r.faults)).join(' ') };
  const { job } = fitting;
  const snapshot = walkTo(job, step);
  if (snapshot) return { job, snapshot };
  return { fault: `The step "${step}" was not reached in ${MOST_STATES} states.` };
}

function listenAt(job: Job, snapshot: FlowSnapshot): ListenFor {
  const { items, number } = saidList(job, snapshot);
  const { pronunciations } = job.flow.file;
  return {
    phrases: items.flatMap((item) => item.phrases),
    pronunciations,
    ...(number
      ? { number: { ...number, decimals: number.decimals } satisfies ListenFor['number'] }
      : {}),
  };
}

/** Breadth first over what may be said, answers before questions, the shortest way in. */
function walkTo(job: Job, step: string): FlowSnapshot | null {
  const queue = [beginJob(job)];
  const seen = new Set<string>();
  for (let i = 0; i < queue.length && i < MOST_STATES; i++) {
    const snapshot = queue[i];
    if (!snapshot) break;
    if (positionOf(snapshot).step === step) return snapshot;
    for (const event of eventsAt(job, snapshot)) {
      const next = stepJob(job, snapshot, event);
      const key = keyOf(next);
      if (seen.has(key)) continue;
      seen.add(key);
      queue.push(next);
    }
  }
  return null;
}

function eventsAt(job: Job, snapshot: FlowSnapshot): readonly FlowEvent[] {
  const { items, number } = saidList(job, snapshot);
  const said = items.filter(({ kind }) => kind === 'fact' || kind === 'choice' || kind === 'move');
  const events = said.flatMap(({ id, event }) =>
    event && id !== 'hold' && id !== 'back' ? [event] : [],
  );
  if (!number) return events;
  const middle = number.expected ?? (number.min + number.max) / 2;
  const values = [middle, number.min, number.max];
  return [...values.map((value) => ({ type: 'reading', value }) as const), ...events];
}

function keyOf(snapshot: FlowSnapshot): string {
  return JSON.stringify([snapshot.value, snapshot.context]);
}
