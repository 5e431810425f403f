/** The gate of a step as after a break: every fact has to be answered. */

import { type FlowSnapshot, type Job, unknownState } from '../../src/flow/index.ts';

export function nothingKnown({ machine }: Job, step: string, come: FlowSnapshot): FlowSnapshot {
  const { context } = come;
  const facts = Object.fromEntries(Object.keys(context.facts).map((fact) => [fact, unknownState]));
  return machine.resolveState({
    value: { [step]: 'gate' },
    context: { ...context, facts, speedSet: null },
  });
}
