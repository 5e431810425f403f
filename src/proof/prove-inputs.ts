/**
 * Proves a flow for the numbers that may be put into it: each at both its ends and as proposed, one by one and together,
 * and for choices and speeds that change in the middle of a run. The verdict says what was walked; of other numbers
 * between the ends, and of combinations that are in no set, it says nothing.
 */

import { type Card, compileJob, type Flow } from '../flow/index.ts';
import { type InputSets, inputSetsOf } from './input-sets.ts';
import { Memory } from './memory.ts';
import type { Verdict, Watch } from './proof.ts';
import { prove } from './prove.ts';
import { proveAdjusted } from './prove-adjusted.ts';

export interface NumbersProblem {
  readonly claim: string;
  readonly step: string;
  /** The numbers it is broken with: "tool carbide, bar-diameter 12 mm"; empty for those proposed. */
  readonly numbers: string;
}

export interface InputsProof {
  readonly verdict: Verdict;
  readonly reason?: string;
  readonly problems: readonly NumbersProblem[];
  /** One number or choice away from what is proposed. */
  readonly single: { readonly walked: number; readonly refused: number };
  readonly together: Omit<InputSets, 'sets'> & { readonly walked: number };
  /** Choices and speeds that may come in the middle of a run, to and fro, with the sizes that are proposed. */
  readonly changes: number;
  /** What the verdict covers, and what it does not, in sentences. */
  readonly covers: readonly string[];
}

/** One `memory` for all cards and flows of a command. Throws `Cancelled` as `prove` does. */
export function proveInputs(
  flow: Flow,
  card: Card,
  memory = new Memory(),
  watch: Watch = {},
): InputsProof {
  const { sets, ...told } = inputSetsOf(flow, card);
  const problems: NumbersProblem[] = [];
  let worst: { verdict: Verdict; reason?: string } = { verdict: 'proved' };
  let walked = 0;
  for (const { name, inputs } of sets) {
    const made = compileJob(flow, card, inputs);
    if (!made.ok) continue;
    const proof = prove(made.job, { ...watch, memory, paths: false });
    problems.push(...proof.problems.map(({ claim, step }) => ({ claim, step, numbers: name })));
    if (proof.verdict === 'proved' || proof.verdict === 'broken') walked += 1;
    else worst = reasoned(proof.verdict, proof.reason, name);
  }
  const adjusted = proveAdjusted(flow, card, memory);
  if (adjusted.verdict === 'too-large' || adjusted.verdict === 'unseeable') {
    worst = reasoned(adjusted.verdict, adjusted.reason, 'changes in a run');
  }
  problems.push(...adjusted.problems);
  const begun = adjusted.tried.filter(({ refused }) => refused === undefined);
  const single = { walked: begun.length, refused: adjusted.tried.length - begun.length };
  const changes = begun.filter(({ anytime }) => anytime).length;
  const together = { ...told, walked };
  return {
    ...(problems.length > 0 ? { verdict: 'broken' as const } : worst),
    problems,
    single,
    together,
    changes,
    covers: coversOf({ single, together, changes }),
  };
}

function reasoned(verdict: Verdict, reason: string | undefined, numbers: string) {
  return { verdict, reason: `${reason ?? ''} (${numbers})` };
}

function coversOf({
  single,
  together,
  changes,
}: Pick<InputsProof, 'single' | 'together' | 'changes'>): readonly string[] {
  const { how, walked, possible, refused, apart } = together;
  const sets =
    how === 'all'
      ? `Together: all ${possible} combinations of both ends, what is proposed and every choice; ${refused} of them no job begins with.`
      : `Together: ${walked} sets of ${possible} combinations, so that every three values of three inputs come together. Four at once are covered only as they fall.`;
  return [
    `One by one: ${single.walked} values at the ends and choices with the others as proposed; ${single.refused} no job begins with.`,
    sets,
    ...(apart.length > 0
      ? [`Not found together in any job that begins, so not walked: ${apart.join('; ')}.`]
      : []),
    `In a run: ${changes} choices and speeds change into one another at any moment, with the sizes that are proposed.`,
    'Readings: on every limit and just beside it on both sides, and what is no size.',
    'Sizes between the ends are not walked.',
  ];
}
