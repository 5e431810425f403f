/** Begins a run, or finds the way back into one that was broken off. Pure. */

import {
  type Adjustment,
  adjustJob,
  beginJob,
  type FlowEvent,
  type Job,
  stepJob,
  viewOf,
} from '../flow/index.ts';
import { benchTexts, sayIn } from '../texts/index.ts';
import { adjustmentIn } from './adjust-run.ts';
import { cutShows } from './cut-shows.ts';
import { entryOf } from './entry.ts';
import { keptReading } from './kept-reading.ts';
import { questionAgain } from './learn-run.ts';
import { paceIn } from './pace-run.ts';
import type { Heard, RunEntry, RunHead } from './ports.ts';
import type { RunState, RunStep } from './run-state.ts';
import { beginTalk } from './talk-chart.ts';
import { tell, tellFirst } from './tell.ts';

/** A new run at its first step, with the first line to say. */
export function beginRun(job: Job, head: RunHead): RunStep {
  const snapshot = beginJob(job);
  const pace = head.pace ?? 'familiar';
  const told = tellFirst({ job, snapshot, pace, explained: [] });
  const line = `${job.flow.file.title}. ${told.line}`;
  const state: RunState = {
    job,
    head,
    snapshot,
    pace,
    explained: told.explained,
    question: told.question,
    talk: beginTalk(),
    seq: 0,
    readings: [],
    cutShows: [],
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
        fault: sayIn(job.flow.language, benchTexts)('entryMissing', {
          wanted: state.seq,
          found: entry.seq,
        }),
      };
    }
    state = { ...state, seq: state.seq + 1 };
    state = questionAgain({ ...state, pace: paceIn(entry.event) ?? state.pace }, entry);
    if (entry.event?.type === 'pace') state = { ...state, question: null };
    if (entry.outcome !== 'moved' || !entry.event) continue;
    if (entry.event.type === 'undo') {
      state = { ...state, ...past.pop(), question: null };
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
  const snapshot = stepJob(state.job, state.snapshot, event);
  const { explained, question } = tell(state, snapshot, reading);
  return {
    ...state,
    snapshot,
    explained,
    question,
    readings: reading ? [...state.readings, reading] : state.readings,
    cutShows: cutShows(state, snapshot),
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
  const is = viewOf(state.job, snapshot, state.pace);
  const say = sayIn(state.job.flow.language, benchTexts);
  const line = `${say('wereAt', { title: was.step.title })} ${is.ask.spoken}`;
  const heard: Heard = {
    text: say('afterBreak'),
    alternatives: [],
    confidence: 1,
    from: 'script',
    at,
  };
  const entry = { ...entryOf(state, heard, { type: 'interrupted' }, 'moved'), said: line };
  return {
    state: { ...state, snapshot, seq: state.seq + 1, undo: null, question: null, lastLine: line },
    effects: [
      { kind: 'append', entry },
      { kind: 'say', line },
    ],
  };
}
