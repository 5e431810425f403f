/** Names a job to the prover by what it is begun with: what is shown as proved, and what is begun, are one. */

import type { ProofJob } from '../proof/index.ts';
import type { CardEntry, ProofChoice, ShelfEntry } from '../screens/world.ts';
import type { Language } from '../texts/index.ts';

/** The very job that is begun by a choice. */
export function proofJobOf(
  { inputs, releaseFirst }: Pick<ProofChoice, 'inputs' | 'releaseFirst'>,
  { flow, kind }: Pick<ShelfEntry, 'flow' | 'kind'>,
  { card }: Pick<CardEntry, 'card'>,
  language: Language,
): ProofJob {
  const release = releaseFirst ? { releaseFirst } : {};
  return { flow, kind, card, inputs, language, ...release };
}
