/** The said list of one step of a flow, found by walking the flow to that step. */

import { beginRun, listenFor, type RunHead } from '../bench/index.ts';
import type { ListenFor } from '../bench/ports.ts';
import {
  beginJob,
  compileJob,
  type FlowEvent,
  type FlowSnapshot,
  type Job,
  limitsOf,
  plausibleRange,
  positionOf,
  saidList,
  stepJob,
} from '../flow/index.ts';
import { readFlowAt, shippedCards, shippedKinds } from './flow-files.ts';

type SaidAt = ListenFor | { readonly fault: string };

/** Situations looked at in one step before giving up. */
const MOST_STATES = 2_000;

/** The flow with its own inputs, on a shipped machine that fits. */
export function fittingJob(file: string): { readonly job: Job } | { readonly fault: string } {
  const read = readFlowAt(file, shippedKinds());
  if (!read.ok) return { fault: read.faults.map((fault) => fault.message).join(' ') };
  const compiled = shippedCards().map((card) => compileJob(read.flow, card));
  const fitting = compiled.filter((result) => result.ok).at(-1);
  return fitting ?? { fault: compiled.flatMap((r) => (r.ok ? [] : r.faults)).join(' ') };
}

/** What may be said on entering the step, with the flow's own inputs on a machine that fits; `opened` as in a RunState. */
export function saidAtStep(file: string, step: string, opened?: string): SaidAt {
  const reached = reachStep(file, step);
  return 'fault' in reached ? reached : listenAt(reached.job, reached.snapshot, opened);
}

export type Reached =
  | { readonly job: Job; readonly snapshot: FlowSnapshot }
  | { readonly fault: string };

/** The flow, walked to the step on a machine that fits. */
export function reachStep(file: string, step: string): Reached {
  const fitting = fittingJob(file);
  if ('fault' in fitting) return fitting;
  const { job } = fitting;
  const steps = job.flow.file.steps.map(({ id }) => id);
  if (!steps.includes(step)) {
    return { fault: `The flow has no step "${step}". It has: ${steps.join(', ')}.` };
  }
  const snapshot = walkTo(job, step);
  if (snapshot) return { job, snapshot };
  return { fault: `The step "${step}" was not reached.` };
}

/** As the bench asks it of the ear, the last word still to be taken back where a word can be. */
export function listenAt(job: Job, snapshot: FlowSnapshot, opened?: string): ListenFor {
  const { state } = beginRun(job, nobody(job));
  const isQuiet = !snapshot.hasTag('turning') && !snapshot.hasTag('held');
  const undo = isQuiet ? { job, snapshot, readings: [] } : null;
  return listenFor({ ...state, snapshot, undo, ...(opened === undefined ? {} : { opened }) });
}

function nobody({ flow, card }: Job): RunHead {
  const { id, title, version } = flow.file;
  return {
    ...{ id: 'hear', flowId: id, flowTitle: title, flowVersion: version },
    ...{ sourceKey: '', operator: '', startedAt: 0, status: 'open', inputs: {}, cardId: card.id },
  };
}

/**
 * Step by step, each entered in the first way found: over whole situations late steps would not be
 * reached, since each reading makes situations of its own.
 */
function walkTo(job: Job, step: string): FlowSnapshot | null {
  return enterSteps(job, () => {}, step).get(step) ?? null;
}

/** Every step that is reached, as it is entered first. */
export function entriesOf(job: Job): ReadonlyMap<string, FlowSnapshot> {
  return enterSteps(job, () => {});
}

/** Every situation the walk through all steps sees: many, and not all there are. */
export function situationsOf(job: Job): readonly FlowSnapshot[] {
  const seen: FlowSnapshot[] = [];
  enterSteps(job, (snapshot) => seen.push(snapshot));
  return seen;
}

function enterSteps(
  job: Job,
  see: (snapshot: FlowSnapshot) => void,
  until?: string,
): ReadonlyMap<string, FlowSnapshot> {
  const entered = new Map<string, FlowSnapshot>();
  const enter = (snapshot: FlowSnapshot) => {
    const at = positionOf(snapshot);
    if (at.phase !== 'end' && !entered.has(at.step)) entered.set(at.step, snapshot);
  };
  enter(beginJob(job));
  for (const [, snapshot] of entered) {
    if (until !== undefined && entered.has(until)) break;
    for (const next of leaveStep(job, snapshot, see)) enter(next);
  }
  return entered;
}

/** The first situation in each step that can follow, breadth first over what may be said. */
function leaveStep(
  job: Job,
  entry: FlowSnapshot,
  see: (snapshot: FlowSnapshot) => void,
): readonly FlowSnapshot[] {
  const { step } = positionOf(entry);
  const queue = [entry];
  const seen = new Set<string>();
  const left = new Map<string, FlowSnapshot>();
  for (const snapshot of queue) {
    if (seen.has(keyOf(snapshot)) || seen.size > MOST_STATES) continue;
    seen.add(keyOf(snapshot));
    see(snapshot);
    for (const event of eventsAt(job, snapshot)) {
      const next = stepJob(job, snapshot, event);
      const to = positionOf(next).step;
      if (to === step) queue.push(next);
      else if (!left.has(to)) left.set(to, next);
    }
  }
  return [...left.values()];
}

function eventsAt(job: Job, snapshot: FlowSnapshot): readonly FlowEvent[] {
  const { items, number } = saidList(job, snapshot);
  const said = items.filter(({ kind }) => kind === 'fact' || kind === 'choice' || kind === 'move');
  const events = said.flatMap(({ id, event }) =>
    event && id !== 'hold' && id !== 'back' ? [event] : [],
  );
  if (!number) return events;
  return [...sizes(job, snapshot).map((value) => ({ type: 'reading', value }) as const), ...events];
}

/** One size within the limits, one under, one over, as far as they are plausible; else the ends of the plausible. */
function sizes(job: Job, snapshot: FlowSnapshot): readonly number[] {
  const step = job.flow.steps.get(positionOf(snapshot).step);
  const { readings } = snapshot.context;
  const range = step && plausibleRange(step, job.numbers, readings);
  if (!step || !range) return [];
  const isJudged = step.kind === 'inspect' || step.kind === 'passes';
  const limits = isJudged ? limitsOf(step, job.numbers, readings) : undefined;
  const ends = [range.lower, (range.lower + range.upper) / 2, range.upper];
  if (!limits) return ends;
  const middle = (limits.lower + limits.upper) / 2;
  return [middle, limits.lower, ...ends].filter(
    (size) => size >= range.lower && size <= range.upper,
  );
}

function keyOf({ value, context }: FlowSnapshot): string {
  return JSON.stringify([value, context.facts, context.passes]);
}
