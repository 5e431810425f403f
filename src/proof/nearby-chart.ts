/**
 * Of a job's chart the one step that is looked at, with the states it leads to: the same data, guards and actions. The
 * others are left out, since a small step goes no further; to build the whole chart for each proof was half its time.
 */

import { createMachine } from 'xstate';
import { endStep, type FlowMachine } from '../flow/index.ts';

interface Node {
  readonly initial?: string;
  readonly entry?: unknown;
  readonly type?: string;
  readonly tags?: unknown;
  readonly states?: Readonly<Record<string, Node>>;
}

/** `implementations`: of guards and actions, in place of the machine's own; XState would build a chart twice to swap them. */
export function nearbyChart(
  machine: FlowMachine,
  step: string,
  slots: readonly string[],
  implementations: unknown = machine.implementations,
): FlowMachine {
  const states = (machine.config.states ?? {}) as Readonly<Record<string, Node>>;
  const others = [...slots, endStep]
    .filter((id) => id !== step)
    .map((id) => [id, entered(states[id])] as const);
  const config: unknown = {
    ...machine.config,
    initial: step,
    states: { ...Object.fromEntries(others), [step]: states[step] },
  };
  const made: unknown = createMachine(
    config as Parameters<typeof createMachine>[0],
    implementations as Parameters<typeof createMachine>[1],
  );
  return made as FlowMachine;
}

/** What entering a state does, without what can happen in it. */
function entered(node: Node | undefined): Node {
  const { initial, entry, type, tags, states } = node ?? {};
  const inner = Object.entries(states ?? {}).map(([id, one]) => [id, entered(one)] as const);
  return {
    ...(initial === undefined ? {} : { initial }),
    ...(entry === undefined ? {} : { entry }),
    ...(type === undefined ? {} : { type }),
    ...(tags === undefined ? {} : { tags }),
    ...(states ? { states: Object.fromEntries(inner) } : {}),
  };
}
