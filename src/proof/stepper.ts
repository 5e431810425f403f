/** Steps the chart as fast as XState can: the same `machine.transition` that its pure `transition` calls. */

import { createActor } from 'xstate';
import type { FlowEvent, FlowMachine, FlowSnapshot } from '../flow/index.ts';

export interface Stepper {
  (snapshot: FlowSnapshot, event: FlowEvent): FlowSnapshot;
  /** The first of the small steps that an event makes: where it leads before gates and guards are looked at again. */
  first(snapshot: FlowSnapshot, event: FlowEvent): FlowSnapshot;
  /** What follows by itself at a snapshot that `first` gave. The same object comes back when nothing does. */
  settle(snapshot: FlowSnapshot): FlowSnapshot;
  /** The idle scope, for the first snapshot. */
  readonly scope: Parameters<FlowMachine['getInitialSnapshot']>[0];
}

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
  const step = (snapshot: FlowSnapshot, event: FlowEvent) =>
    snapshot.status === 'active' ? machine.transition(snapshot, event, scope) : snapshot;
  const first = (snapshot: FlowSnapshot, event: FlowEvent) =>
    snapshot.status === 'active' ? firstOf(machine, snapshot, event, scope) : snapshot;
  const settle = (snapshot: FlowSnapshot) => step(snapshot, settling);
  return Object.assign(step, { first, settle, scope });
}

/** An event that no chart hears: XState then only looks whether anything follows by itself. */
const settling = { type: 'settle' } as unknown as FlowEvent;

type Scope = Parameters<FlowMachine['transition']>[2];

class FirstStep {
  constructor(readonly snapshot: FlowSnapshot) {}
}

/**
 * XState tells its inspectors each small step as it is made; after the first one the work is broken off. Should it ever
 * tell nothing, the whole transition is taken, which is right as well, only slower to walk.
 */
function firstOf(machine: FlowMachine, snapshot: FlowSnapshot, event: FlowEvent, scope: Scope) {
  const system: unknown = {
    _sendInspectionEvent: (told: { readonly snapshot: FlowSnapshot }) => {
      throw new FirstStep(told.snapshot);
    },
  };
  try {
    return machine.transition(snapshot, event, {
      ...scope,
      system: system as Scope['system'],
    });
  } catch (stopped) {
    if (stopped instanceof FirstStep) return stopped.snapshot;
    throw stopped;
  }
}
