/** What is to be seen and said in a run now, at its pace. */

import { type FlowSnapshot, type Job, type Pace, type View, viewOf } from '../flow/index.ts';
import type { RunState } from './run-state.ts';

export function viewNow({ job, snapshot, pace }: RunState): View {
  return viewAt(job, snapshot, pace);
}

interface Seen {
  readonly job: Job;
  readonly pace: Pace;
  readonly view: View;
}

/** The lines of a move, the replies and the screen all ask for the view of one snapshot. */
const seen = new WeakMap<FlowSnapshot, Seen>();

export function viewAt(job: Job, snapshot: FlowSnapshot, pace: Pace): View {
  const old = seen.get(snapshot);
  if (old?.job === job && old.pace === pace) return old.view;
  const view = viewOf(job, snapshot, pace);
  seen.set(snapshot, { job, pace, view });
  return view;
}
