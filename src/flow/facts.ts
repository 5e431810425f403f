/** Reading and changing what is believed about the machine. */

import { type Facts, unknownState } from './events.ts';
import type { MachineKind } from './kind-shape.ts';
import type { WantedFacts } from './words-shape.ts';

/** Nothing is known before somebody has answered. */
export function unknownFacts(kind: MachineKind): Facts {
  return Object.fromEntries(kind.facts.map((fact) => [fact.id, unknownState]));
}

export function stateOf(facts: Facts, fact: string): string {
  return facts[fact] ?? unknownState;
}

export function isMet(facts: Facts, wanted: WantedFacts): boolean {
  for (const fact in wanted) if (facts[fact] !== wanted[fact]) return false;
  return true;
}

/** The wanted facts that are not so, in the order in which the machine kind lists its facts. */
export function missingFacts(
  facts: Facts,
  wanted: WantedFacts,
  kind: MachineKind,
): readonly string[] {
  return kind.facts
    .map((fact) => fact.id)
    .filter((fact) => fact in wanted && facts[fact] !== wanted[fact]);
}

export function withFacts(facts: Facts, changes: WantedFacts): Facts {
  return { ...facts, ...changes };
}

export function withUnknown(facts: Facts, forget: Iterable<string>): Facts {
  const changed: Record<string, string> = { ...facts };
  for (const fact of forget) changed[fact] = unknownState;
  return changed;
}

/** True for a state that may be reported at any moment, asked or not. */
export function isLoss(kind: MachineKind, fact: string, state: string): boolean {
  const found = kind.facts.find((one) => one.id === fact);
  return found?.states.some((one) => one.id === state && one.loss) ?? false;
}

/** `wanted` without some facts. */
export function withoutKeys(wanted: WantedFacts, facts: readonly string[]): WantedFacts {
  return Object.fromEntries(Object.entries(wanted).filter(([fact]) => !facts.includes(fact)));
}
