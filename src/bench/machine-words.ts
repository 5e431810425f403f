/** Words of the machine kind that were heard where they do not count now. Pure. */

import { normalise } from '../words/index.ts';
import type { RunState } from './run-state.ts';

/** A right word at the wrong moment is refused, not misheard. */
export function isMachineWord(state: RunState, text: string): boolean {
  const said = normalise(text, state.job.flow.language);
  const spoken = state.job.flow.kind.facts.flatMap(({ states }) => states);
  return spoken.some(({ word, also }) => [word, ...also].includes(said));
}

export function isTroubleWord({ job }: RunState, text: string): boolean {
  const said = normalise(text, job.flow.language);
  return job.flow.kind.walks.some(({ word, also }) => [word, ...also].includes(said));
}
