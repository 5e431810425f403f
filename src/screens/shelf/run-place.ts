/** Where a kept run stands: its job made again and its entries replayed. */

import { type KeptRun, type RunState, replayRun, startJob } from '../../bench/index.ts';
import { viewOf } from '../../flow/index.ts';

/** The run as it was after its last entry; null when its texts or entries no longer fit together. */
export function stateOfRun(run: KeptRun): RunState | null {
  const started = startJob(run.source, run.head.inputs);
  if (!started.ok) return null;
  const replayed = replayRun(started.job, run.head, run.entries);
  return replayed.ok ? replayed.state : null;
}

/** "step 12 of 43: Face the end", or nothing when it cannot be told. */
export function placeOfRun(run: KeptRun): string | null {
  const state = stateOfRun(run);
  if (state?.snapshot.status !== 'active') return null;
  const { step } = viewOf(state.job, state.snapshot);
  return `step ${step.index + 1} of ${step.of}: ${step.title}`;
}
