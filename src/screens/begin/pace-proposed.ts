/** The pace that is proposed for somebody: everything in full until they have finished this flow once. Pure. */

import type { Pace, RunHead } from '../../bench/index.ts';

/** `runs` are the heads in the Logbook, newest first. */
export function paceProposed(runs: readonly RunHead[], operator: string, flowId: string): Pace {
  const own = runs.filter(
    (run) => run.operator.trim() === operator.trim() && run.flowId === flowId,
  );
  if (!own.some((run) => run.status === 'finished')) return own[0]?.pace ?? 'first-time';
  const last = own[0]?.pace;
  return last === undefined || last === 'first-time' ? 'familiar' : last;
}
