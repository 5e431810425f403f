/** What is to be seen and said in a run now, at its pace. */

import { type View, viewOf } from '../flow/index.ts';
import type { RunState } from './run-state.ts';

export function viewNow({ job, snapshot, pace }: RunState): View {
  return viewOf(job, snapshot, pace);
}
