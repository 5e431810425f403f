/** Begins any shipped flow, and comes to the entry of each of its steps by words. */

import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { beginRun, type RunState, startJob } from '../../../src/bench/index.ts';
import { repository } from '../../../src/cli/flow-files.ts';
import { endStep, positionOf } from '../../../src/flow/index.ts';
import { textOf } from '../../flow/shipped.ts';
import { head } from '../scripted.ts';
import { namesOfPaths, placeIn } from './step-chart.ts';
import { StepWalk } from './walk-step.ts';

/** A run of the flow with the metric card of its machine kind and its own numbers. */
export function beginFlow(path: string): RunState {
  const flow = readFileSync(join(repository, path), 'utf8');
  const { machineKind } = JSON.parse(flow) as { readonly machineKind: string };
  const kind = textOf(`kinds/${machineKind}.json`);
  const started = startJob({ flow, kind, card: textOf(`machines/metric-${machineKind}.json`) }, {});
  if (!started.ok) throw new Error(started.faults.join('\n'));
  const { id, title } = started.job.flow.file;
  return beginRun(started.job, { ...head, flowId: id, flowTitle: title }).state;
}

/** A run that stands at the entry of each step that can be come to. */
export function entriesOf(first: RunState): ReadonlyMap<string, RunState> {
  const found = new Map<string, RunState>();
  const open: RunState[] = [first];
  for (let state = open.pop(); state; state = open.pop()) {
    const step = stepOf(state);
    if (step === endStep || found.has(step)) continue;
    found.set(step, state);
    open.push(...leave(state, step));
  }
  return found;
}

function stepOf({ snapshot }: RunState): string {
  return positionOf(snapshot).step;
}

const roundabout: ReadonlySet<string> = new Set(['hold', 'stop', 'interrupted', 'back', 'trouble']);

/** The run after the step, once for each way out of it. */
function leave(state: RunState, step: string): readonly RunState[] {
  const walk = new StepWalk(state, step);
  const straight = walk.chart.arrows.filter(
    ({ event, to }) => !roundabout.has(event) && to !== 'hold',
  );
  return namesOfPaths(placeIn(state.snapshot, step), straight)
    .filter((names) => names.at(-1)?.includes('→ out:'))
    .flatMap((names) => walk.path({ state, last: '', ahead: [] }, names)?.state ?? []);
}
