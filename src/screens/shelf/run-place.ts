/** Where a kept run stands: its job made again and its entries replayed. */

import { type KeptRun, type RunState, replayRun, startJob } from '../../bench/index.ts';
import { viewOf } from '../../flow/index.ts';
import type { Language } from '../../texts/index.ts';

/**
 * The run as it was after its last entry; null when its texts or entries no longer fit together. What it says by itself
 * comes in `language`; what its flow says is as it was kept.
 */
export function stateOfRun(run: KeptRun, language?: Language): RunState | null {
  const started = startJob(run.source, run.head.inputs, language);
  if (!started.ok) return null;
  const replayed = replayRun(started.job, run.head, run.entries);
  return replayed.ok ? replayed.state : null;
}

export interface Place {
  /** From 1. */
  readonly index: number;
  readonly of: number;
  readonly title: string;
}

/** "Step 12 of 43: Face the end", or nothing when it cannot be told. */
export function placeOfRun(run: KeptRun): Place | null {
  const state = stateOfRun(run);
  if (state?.snapshot.status !== 'active') return null;
  const { step } = viewOf(state.job, state.snapshot);
  return { index: step.index + 1, of: step.of, title: step.title };
}
