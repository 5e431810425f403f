/** The words of a job that are worth learning in a person's own voice: those that move it, in the order of what hangs on them. Pure. */

import { commandPhrases, type Job } from '../flow/index.ts';

const moves = ['stop', 'hold', 'next', 'carry-on', 'correct', 'wrong', 'keep', 'repeat'] as const;

/** One way of saying each: moves first, then what the machine's conditions are answered with. */
export function wordsToEnrol(job: Job): readonly string[] {
  const { language, kind } = job.flow;
  const said = moves.flatMap((id) => commandPhrases(language, id).slice(0, 1));
  const states = kind.facts.flatMap((fact) => fact.states.map(({ word }) => word));
  return [...new Set([...said, ...states])];
}
