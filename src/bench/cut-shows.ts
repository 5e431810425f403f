/**
 * Troubles that only a cut can show, such as chatter or a poor finish: they count once a step that names them has cut,
 * and from then on wherever a step that names them stands. What is tried at every start needs no cut. Pure.
 */

import { type FlowSnapshot, type MachineKind, planAt, positionOf } from '../flow/index.ts';
import type { RunState } from './run-state.ts';
import type { BenchItem } from './said-now.ts';

type FaultWalk = MachineKind['walks'][number];

/** Ids of the troubles that what was cut so far may have shown, after a move, in the order of the machine kind. */
export function cutShows(
  { job, cutShows: before }: Pick<RunState, 'job' | 'cutShows'>,
  snapshot: FlowSnapshot,
): readonly string[] {
  if (positionOf(snapshot).phase !== 'cutting') return before;
  const named = planAt(job, snapshot)?.walks ?? [];
  const shown = new Set([...before, ...named]);
  const { walks } = job.flow.kind;
  return walks.flatMap(({ id, everywhere }) => (!everywhere && shown.has(id) ? [id] : []));
}

/** True where it may have been met by now. */
export function mayBeMet({ cutShows: shown }: RunState, { id, everywhere }: FaultWalk): boolean {
  return everywhere || shown.includes(id);
}

/** False for the word of a trouble that nothing was cut to show. */
export function countsByCut(state: RunState): (item: Pick<BenchItem, 'event'>) => boolean {
  const { walks } = state.job.flow.kind;
  return ({ event }) =>
    event?.type !== 'trouble' ||
    walks.some((walk) => walk.id === event.walk && mayBeMet(state, walk));
}
