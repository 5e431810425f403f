/** Whether a counterexample is told as people talk: every turn a word that somebody says, and no name of the file in it. */

import type { Job } from '../../src/flow/index.ts';
import { claimNamed, type Problem, toldAs } from '../../src/proof/index.ts';

const commands = ['next', 'carry on', 'back', 'hold', 'stop', '(break)'];
/** "16.05 mm", as a size is said. */
const size = /^-?\d+(\.\d+)? [a-z°]+$/;

/** What nobody would say or understand; empty when all is well. */
export function foreignWords(job: Job, problem: Problem): readonly string[] {
  const { sentence } = claimNamed(job, problem.claim);
  const turns = toldAs(job, problem.events ?? []);
  const spoken = wordsOf(job);
  const unsaid = turns.flatMap(({ who, says }) =>
    who === 'you' && !spoken.has(says) && !size.test(says) ? [says] : [],
  );
  const texts = [sentence, problem.message, ...turns.map(({ says }) => says)];
  const ids = namesOf(job);
  return [...unsaid, ...texts.filter((text) => ids.some((id) => text.includes(id)))];
}

function wordsOf(job: Job): ReadonlySet<string> {
  const { facts, walks } = job.flow.kind;
  const options = job.flow.file.steps.flatMap((step) =>
    step.kind === 'choose' ? step.options.map(({ word }) => word) : [],
  );
  return new Set([
    ...commands,
    ...facts.flatMap(({ states }) => states.map(({ word }) => word)),
    ...walks.map(({ word }) => word),
    ...options,
  ]);
}

/** Names of the file that cannot be taken for English: joined by hyphens or with a capital inside. */
function namesOf(job: Job): readonly string[] {
  const { file, kind } = job.flow;
  const said = [...file.steps, ...kind.facts, ...kind.walks, ...file.inputs, ...file.workings];
  const ids = [...said.map(({ id }) => id), ...Object.keys(file.gates)];
  return ids.filter((id) => /-|[a-z][A-Z]/.test(id));
}
