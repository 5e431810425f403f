/**
 * An instructor's release, as a fact of the flow: it stands in the gate of the step that asks for it, no word answers it,
 * and it is forgotten whenever such a step is begun anew and after every break.
 */

import { flowTexts, type Language, sayIn, tableIn } from '../texts/index.ts';
import type { FlowFile, Step } from './flow-shape.ts';
import type { Fact, MachineKind } from './kind-shape.ts';
import type { WantedFacts } from './words-shape.ts';

/** No id that a file may use, so that it stands beside every machine kind. */
export const releaseFact = 'release!';
const given = 'given';

/** What the gate of a step wants for its release. */
export const released: WantedFacts = { [releaseFact]: given };

function releaseFactIn(language: Language): Fact {
  const say = sayIn(language, flowTexts);
  const [word = ''] = tableIn(language, flowTexts).releaseWord;
  return {
    id: releaseFact,
    label: say('releaseLabel'),
    ask: say('releaseAsk'),
    states: [{ id: given, word, also: [], loss: false }],
    remedy: say('releaseRemedy'),
    why: say('releaseWhy'),
    handsForget: false,
  };
}

/** The machine kind as a flow sees it: with the release among its facts where a step asks for one. */
export function withRelease(kind: MachineKind, file: FlowFile, language: Language): MachineKind {
  if (!file.steps.some((step) => step.release)) return kind;
  return { ...kind, facts: [...kind.facts, releaseFactIn(language)] };
}

export function releaseNeeds(step: Step): WantedFacts {
  return step.release ? released : {};
}
