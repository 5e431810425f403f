/** Which arrows of a compiled chart an event takes, told by XState itself: one small step after the other. */

import type { FlowEvent, FlowSnapshot, Job } from '../../src/flow/index.ts';
import { stepperOf } from '../../src/proof/stepper.ts';

type Machine = Job['machine'];
export type StateNode = Machine['root'];
export type Transition = StateNode['always'] extends readonly (infer T)[] | undefined ? T : never;

export interface SmallMove {
  readonly from: FlowSnapshot;
  readonly transition: Transition;
  readonly to: FlowSnapshot;
}

/** All that one event does, in its order; nothing for an event that is refused. */
export type Moves = (snapshot: FlowSnapshot, event: FlowEvent) => readonly SmallMove[];

export function movesOf(machine: Machine): Moves {
  const { scope } = stepperOf(machine);
  return (snapshot, event) => {
    if (snapshot.status !== 'active') return [];
    const moves: SmallMove[] = [];
    let from: FlowSnapshot = snapshot;
    const told = (step: { snapshot: FlowSnapshot; _transitions: readonly Transition[] }) => {
      for (const transition of step._transitions) {
        moves.push({ from, transition, to: step.snapshot });
      }
      from = step.snapshot;
    };
    const system: unknown = { _sendInspectionEvent: told };
    machine.transition(snapshot, event, { ...scope, system: system as typeof scope.system });
    return moves;
  };
}
