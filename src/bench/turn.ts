/** Whose turn it is, in one word: what the charts of sound, of talk and of the flow tell together. Pure. */

import type { RunState } from './run-state.ts';
import { answerState } from './talk-chart.ts';

/**
 * `reading-back`: a number waits for its answer. `asking-again`: what was said was not understood. `held`: the job waits
 * until it is known again how the machine stands. The first three say whether one may speak now.
 */
export type Turn = 'deaf' | 'speaking' | 'listening' | 'reading-back' | 'asking-again' | 'held';

/** An ear that is deaf goes before everything, since then the keys must do; then what is asked. */
export function turnOf(
  { talk, snapshot }: Pick<RunState, 'talk' | 'snapshot'>,
  sound: 'speaking' | 'listening' | 'deaf',
): Turn {
  if (sound === 'deaf') return 'deaf';
  if (answerState(talk) !== 'none') return 'reading-back';
  if (talk.context.misses > 0) return 'asking-again';
  return snapshot.hasTag('held') ? 'held' : sound;
}
