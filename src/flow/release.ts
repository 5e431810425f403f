/**
 * An instructor's release, as a fact of the flow: it stands in the gate of the step that asks for it, no word answers it,
 * and it is forgotten whenever such a step is begun anew and after every break.
 */

import type { FlowFile, Step } from './flow-shape.ts';
import type { Fact, MachineKind } from './kind-shape.ts';
import type { WantedFacts } from './words-shape.ts';

/** No id that a file may use, so that it stands beside every machine kind. */
export const releaseFact = 'release!';
const given = 'given';

export const releaseAsk = 'Ask the instructor to release this step.';

/** What the gate of a step wants for its release. */
export const released: WantedFacts = { [releaseFact]: given };

const fact: Fact = {
  id: releaseFact,
  label: 'Instructor',
  ask: releaseAsk,
  states: [{ id: given, word: 'released by the instructor', also: [], loss: false }],
  remedy: 'The instructor looks at the set-up and gives the passphrase.',
  why: 'In this shop an instructor looks before this step.',
  handsForget: false,
};

/** The machine kind as a flow sees it: with the release among its facts where a step asks for one. */
export function withRelease(kind: MachineKind, file: FlowFile): MachineKind {
  if (!file.steps.some((step) => step.release)) return kind;
  return { ...kind, facts: [...kind.facts, fact] };
}

export function releaseNeeds(step: Step): WantedFacts {
  return step.release ? released : {};
}
