/** Gives the screens the proof of a job that they name by flow, card and numbers. */

import type { ProofJob } from '../proof/index.ts';
import type { CardEntry, ProofChoice, Proofs, ShelfEntry } from '../screens/world.ts';
import type { Language } from '../texts/index.ts';
import { ProofDesk, startProver } from '../verdict/page/index.ts';
import { browserClock } from './clock.ts';
import { proofJobOf } from './proof-job.ts';

/** A walk that takes longer than a coffee is too large for a page. */
const limit = 120_000;

export interface ProofFront extends Proofs {
  /** Whether the job is proved, walking every path where that is not known. */
  isJobProved(job: ProofJob): Promise<boolean>;
}

export function openProofs(
  shelf: readonly ShelfEntry[],
  cards: () => readonly CardEntry[],
  language: Language,
): ProofFront {
  const desk = new ProofDesk({ clock: browserClock, start: startProver, limit });
  const jobOf = (choice: ProofChoice) => {
    const { flowId, cardId } = choice;
    const entry = shelf.find((one) => one.id === flowId);
    const card = cards().find((one) => one.id === cardId);
    if (!entry || !card) return null;
    return proofJobOf(choice, entry, card, language);
  };
  const isJobProved = async (job: ProofJob) => {
    const state = await desk.ask(job);
    return state.is === 'told' && state.proof.verdict === 'proved';
  };
  return {
    state: (choice) => {
      const job = jobOf(choice);
      return job ? desk.state(job) : undefined;
    },
    ask: (choice) => {
      const job = jobOf(choice);
      if (job) void desk.ask(job);
    },
    stop: () => desk.stop(),
    subscribe: (changed) => desk.subscribe(changed),
    isJobProved,
  };
}
