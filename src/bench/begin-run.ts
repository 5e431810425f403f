/** Begins a run, or finds the way back into one that was broken off. Pure. */

import {
  type Adjustment,
  adjustJob,
  beginJob,
  type FlowEvent,
  type Job,
  joined,
  stepJob,
  viewOf,
} from '../flow/index.ts';
import { adjustmentIn } from './adjust-run.ts';
import { entryOf } from './entry.ts';
import { keptReading } from './kept-reading.ts';
import type { Heard, RunEntry, RunHead } from './ports.ts';
import type { RunState, RunStep } from './run-state.ts';
import { beginTalk } from './talk-chart.ts';

/** A new run at its first step, with the first line to say. */
export function beginRun(job: Job, head: RunHead): RunStep {
  const snapshot = beginJob(job);
  const view = viewOf(job, snapshot);
  const line = `${job.flow.file.title}. ${joined(view.lead, view.ask).spoken}`;
  const state: RunState = {
    job,
    head,
    snapshot,
    talk: beginTalk(),
    seq: 0,
    readings: [],
    undo: null,
    lastLine: line,
  };
  return { state, effects: [{ kind: 'say', line }] };
}

export type ReplayResult =
  | { readonly ok: true; readonly state: RunState }
  | { readonly ok: false; readonly fault: string };

/** The run exactly as it was after its last entry: same step, facts and readings. */
export function replayRun(job: Job, head: RunHead, entries: readonly RunEntry[]): ReplayResult {
  let { state } = beginRun(job, head);
  const past: NonNullable<RunState['undo']>[] = [];
  for (const entry of entries) {
    if (entry.seq !== state.seq) {
      return {
        ok: false,
        fault: `Entry ${state.seq} of the run is missing; entry ${entry.seq} follows.`,
      };
    }
    state = { ...state, seq: state.seq + 1 };
    if (entry.outcome !== 'moved' || !entry.event) continue;
    if (entry.event.type === 'undo') {
      state = { ...state, ...past.pop() };
      continue;
    }
    const { job: numbers, snapshot, readings } = state;
    past.push({ job: numbers, snapshot, readings });
    state = replayed(state, entry);
  }
  return { ok: true, state };
}

function replayed(state: RunState, entry: RunEntry): RunState {
  const change = adjustmentIn(entry.event);
  if (change) return { ...state, ...adjustedAgain(state, change), ...lastSaid(state, entry) };
  const event = entry.event as FlowEvent;
  const reading = keptReading(state.job, state.snapshot, event, entry.at);
  return {
    ...state,
    snapshot: stepJob(state.job, state.snapshot, event),
    readings: reading ? [...state.readings, reading] : state.readings,
    ...lastSaid(state, entry),
  };
}

function lastSaid(state: RunState, entry: RunEntry): Pick<RunState, 'lastLine'> {
  return { lastLine: entry.said ?? state.lastLine };
}

/** What was accepted once is accepted again: the same texts give the same numbers. */
function adjustedAgain(
  { job, snapshot }: RunState,
  change: Adjustment,
): Pick<RunState, 'job' | 'snapshot'> {
  const adjusted = adjustJob(job, snapshot, change);
  return adjusted.ok ? { job: adjusted.job, snapshot: adjusted.snapshot } : { job, snapshot };
}

/**
 * After a break: says where we were, then asks for every fact anew before anything turns.
 * The interruption is an entry of its own, so that it is on record.
 */
export function comeBack(state: RunState, at: number): RunStep {
  if (state.snapshot.status !== 'active') return { state, effects: [] };
  const was = viewOf(state.job, state.snapshot);
  const snapshot = stepJob(state.job, state.snapshot, { type: 'interrupted' });
  const is = viewOf(state.job, snapshot);
  const line = `Back after a break. We were at: ${was.step.title}. ${is.ask.spoken}`;
  const heard: Heard = {
    text: 'back after a break',
    alternatives: [],
    confidence: 1,
    from: 'script',
    at,
  };
  const entry = { ...entryOf(state, heard, { type: 'interrupted' }, 'moved'), said: line };
  return {
    state: { ...state, snapshot, seq: state.seq + 1, undo: null, lastLine: line },
    effects: [
      { kind: 'append', entry },
      { kind: 'say', line },
    ],
  };
}
