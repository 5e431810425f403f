/** One line of a run's record. */

import { positionOf } from '../flow/index.ts';
import type { Heard, RunEntry } from './ports.ts';
import type { RunState, RunStep } from './run-state.ts';

/** What was heard, what it was taken for, and what came of it, as the next entry of the run. */
export function entryOf(
  state: RunState,
  heard: Heard,
  event: RunEntry['event'],
  outcome: RunEntry['outcome'],
): RunEntry {
  return {
    version: 1,
    runId: state.head.id,
    seq: state.seq,
    at: heard.at,
    step: positionOf(state.snapshot).step,
    heard: { text: heard.text, from: heard.from, confidence: heard.confidence },
    event,
    outcome,
  };
}

/** The step with what the heard thing was taken for in each line of the record it writes. */
export function withUnderstood(step: RunStep, understood: string | undefined): RunStep {
  return understood === undefined ? step : rewritten(step, (entry) => ({ ...entry, understood }));
}

/** The step with all that was said in each line of the record, where only a part of it was weighed. */
export function withHeard(step: RunStep, { text }: Heard): RunStep {
  return rewritten(step, (entry) =>
    entry.heard ? { ...entry, heard: { ...entry.heard, text } } : entry,
  );
}

function rewritten(step: RunStep, rewrite: (entry: RunEntry) => RunEntry): RunStep {
  const effects = step.effects.map((effect) =>
    effect.kind === 'append' ? { ...effect, entry: rewrite(effect.entry) } : effect,
  );
  return { ...step, effects };
}
