/** Steps the chart as fast as XState can: the same `machine.transition` that its pure `transition` calls. */

import { createActor } from 'xstate';
import type { FlowEvent, FlowMachine, FlowSnapshot } from '../flow/index.ts';

export type Stepper = (snapshot: FlowSnapshot, event: FlowEvent) => FlowSnapshot;

const nothing = () => {};

/**
 * XState's `transition` makes an actor, and with it a whole initial snapshot, for every event: measured ten times
 * the cost of the transition. Our charts start no actors and run no actions, so one idle scope serves them all.
 */
export function stepperOf(machine: FlowMachine): Stepper {
  const self = createActor(machine);
  const scope = {
    self,
    id: '',
    sessionId: '',
    system: self.system,
    logger: nothing,
    defer: nothing,
    emit: nothing,
    stopChild: nothing,
    actionExecutor: nothing,
  };
  return (snapshot, event) =>
    snapshot.status === 'active' ? machine.transition(snapshot, event, scope) : snapshot;
}
