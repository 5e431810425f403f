/** The end of a run before its end. */

import { viewOf } from '../flow/index.ts';
import { benchTexts, sayIn } from '../texts/index.ts';
import { refused } from './beside-run.ts';
import { entryOf } from './entry.ts';
import type { Heard } from './ports.ts';
import type { RunState, RunStep } from './run-state.ts';

/** Ends a run before its end. Refused while something may be turning. */
export function giveUp(state: RunState, heard: Heard): RunStep {
  const says = sayIn(state.job.flow.language, benchTexts);
  if (mayBeTurning(state)) {
    const { prompts } = state.job.flow.kind;
    return refused(state, heard, `${says('mayTurn')} ${prompts.stop}`);
  }
  const entry = { ...entryOf(state, heard, null, 'note'), said: says('givenUp') };
  const next = { ...state, seq: state.seq + 1 };
  return {
    state: { ...next, head: { ...state.head, status: 'given-up', endedAt: heard.at } },
    effects: [
      { kind: 'append', entry },
      { kind: 'finish', status: 'given-up', endedAt: heard.at, readings: state.readings },
    ],
  };
}

function mayBeTurning(state: RunState): boolean {
  const { phase } = viewOf(state.job, state.snapshot);
  const { power } = state.job.flow.kind.roles;
  const turning = state.snapshot.status === 'active' && state.snapshot.hasTag('turning');
  const known = state.snapshot.context.facts[power.fact];
  return turning || known === power.on || (phase === 'hold' && known !== power.off);
}
