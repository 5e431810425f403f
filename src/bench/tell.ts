/**
 * What a move of the chart is told as, at the pace of the run. At the first-time pace each step says once what it is for,
 * each condition why it is asked, and a check question is put where the flow has one. Pure.
 */

import { type FlowSnapshot, joined, type View, viewOf } from '../flow/index.ts';
import {
  announce,
  isSameScene,
  joinLines,
  type Move,
  moveOf,
  newsOf,
  titleOf,
} from './announce.ts';
import { type AskedQuestion, questionAt, questionLine } from './check-question.ts';
import type { KeptReading } from './ports.ts';
import type { RunState } from './run-state.ts';

export interface Told {
  readonly line: string;
  /** Reasons that need not be given again: "step:mount", "fact:guard". */
  readonly explained: readonly string[];
  readonly question: AskedQuestion | null;
}

/** A run's move to `after`; where nothing has moved yet, `state.snapshot` is its beginning. */
export function tell(
  state: Pick<RunState, 'job' | 'snapshot' | 'pace' | 'explained'>,
  after: FlowSnapshot,
  reading?: KeptReading,
): Told {
  const { job, snapshot, pace, explained } = state;
  if (pace === 'first-time') {
    return tellFully(state, moveOf(job, snapshot, after, reading, pace));
  }
  return { line: announce(job, snapshot, after, reading, pace), explained, question: null };
}

/** The first line of a run. */
export function tellFirst(state: Pick<RunState, 'job' | 'snapshot' | 'pace' | 'explained'>): Told {
  const { job, snapshot, pace, explained } = state;
  const is = viewOf(job, snapshot, pace);
  if (pace !== 'first-time') {
    return { line: joined(is.lead, is.ask).spoken, explained, question: null };
  }
  return inFull(state, snapshot, is, is.lead.spoken);
}

function tellFully(state: Pick<RunState, 'job' | 'explained'>, move: Move): Told {
  const { is } = move;
  const told = inFull(state, move.after, is, isSameScene(move) ? '' : is.lead.spoken);
  const line = joinLines([newsOf(move), titleOf(move), told.line]);
  return { ...told, line: line === '' ? is.lead.spoken : line };
}

/** The reason of a new step comes before what is to be done, that of a condition before its question. */
function inFull(
  { job, explained }: Pick<RunState, 'job' | 'explained'>,
  at: FlowSnapshot,
  is: View,
  lead: string,
): Told {
  // One reason at a time: that of a condition can wait until it is asked again.
  const reason = reasonsOf(job, is).find(({ key }) => !explained.includes(key));
  const known = reason ? [...explained, reason.key] : explained;
  const question = questionAt(job, at, explained);
  const because = reason?.of === 'step' ? reason.why : '';
  if (question) {
    const line = joinLines([
      `${is.step.title}.`,
      because,
      questionLine(question, job.flow.language),
    ]);
    return { line, explained: [...known, `question:${question.step}`], question };
  }
  const why = reason?.of === 'fact' ? reason.why : '';
  return { line: joinLines([because, lead, why, is.ask.spoken]), explained: known, question: null };
}

interface Reason {
  readonly of: 'step' | 'fact';
  readonly key: string;
  readonly why: string;
}

/** Where something turns or is held there is no time for reasons. */
const busy: ReadonlySet<View['phase']> = new Set(['cutting', 'stopping', 'hold', 'end']);

function reasonsOf(job: RunState['job'], view: View): readonly Reason[] {
  if (busy.has(view.phase)) return [];
  const { id } = view.step;
  const own: readonly Reason[] =
    view.why === undefined ? [] : [{ of: 'step', key: `step:${id}${walkOf(view)}`, why: view.why }];
  // What a step asks for when it is done is explained by the step itself.
  const isGate = view.phase === 'gate' || job.flow.steps.get(id)?.kind === 'check';
  const asked = isGate ? view.gate.find((line) => line.ask && !line.met) : undefined;
  if (asked?.why === undefined) return own;
  return [...own, { of: 'fact', key: `fact:${asked.fact}`, why: asked.why }];
}

/** Each cause of a fault walk has a reason of its own. */
function walkOf(view: View): string {
  return view.phase === 'walk' ? `/${view.step.title}` : '';
}
