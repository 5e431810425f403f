/** Steps the chart as fast as XState can: the same `machine.transition` that its pure `transition` calls. */

import { createActor, createMachine } from 'xstate';
import type { FlowEvent, FlowMachine, FlowSnapshot } from '../flow/index.ts';

export interface Stepper {
  (snapshot: FlowSnapshot, event: FlowEvent): FlowSnapshot;
  /** The first of the small steps that an event makes: where it leads before gates and guards are looked at again. */
  first(snapshot: FlowSnapshot, event: FlowEvent): FlowSnapshot;
  /** The next small step that follows by itself. The same object comes back when none does. */
  follow(snapshot: FlowSnapshot): FlowSnapshot;
  /** The idle scope, for the first snapshot. */
  readonly scope: Parameters<FlowMachine['getInitialSnapshot']>[0];
}

const nothing = () => {};

/** No guard or assign of ours asks who plays it. */
const idle = createActor(createMachine({}));

/**
 * XState's `transition` makes an actor, and with it a whole initial snapshot, for every event: measured ten times
 * the cost of the transition. Our charts start no actors and run no actions, so one idle scope serves them all.
 */
export function stepperOf(machine: FlowMachine): Stepper {
  const scope = {
    self: idle as unknown as Scope['self'],
    id: '',
    sessionId: '',
    system: idle.system,
    logger: nothing,
    defer: nothing,
    emit: nothing,
    stopChild: nothing,
    actionExecutor: nothing,
  };
  const step = (snapshot: FlowSnapshot, event: FlowEvent) =>
    snapshot.status === 'active' ? machine.transition(snapshot, event, scope) : snapshot;
  const first = (snapshot: FlowSnapshot, event: FlowEvent) => small(snapshot, event, 1);
  const follow = (snapshot: FlowSnapshot) => small(snapshot, settling, 2);
  const small = (snapshot: FlowSnapshot, event: FlowEvent, nth: number) =>
    snapshot.status === 'active' ? smallStep(machine, scope, snapshot, event, nth) : snapshot;
  return Object.assign(step, { first, follow, scope });
}

/** An event that no chart hears: XState then only looks whether anything follows by itself. */
const settling = { type: 'settle' } as unknown as FlowEvent;

type Scope = Parameters<FlowMachine['transition']>[2];

class SmallStep {
  constructor(readonly snapshot: FlowSnapshot) {}
}

/**
 * XState tells its inspectors each small step as it is made, the event's own first, even where it is refused; at the
 * `nth` the work is broken off. Where there is none the whole is done, and it is what was before.
 */
function smallStep(
  machine: FlowMachine,
  scope: Scope,
  snapshot: FlowSnapshot,
  event: FlowEvent,
  nth: number,
): FlowSnapshot {
  let told = 0;
  const system: unknown = {
    _sendInspectionEvent: (step: { readonly snapshot: FlowSnapshot }) => {
      told += 1;
      if (told === nth) throw new SmallStep(step.snapshot);
    },
  };
  try {
    machine.transition(snapshot, event, { ...scope, system: system as Scope['system'] });
  } catch (stopped) {
    if (stopped instanceof SmallStep) return stopped.snapshot;
    throw stopped;
  }
  if (told !== nth - 1) throw new Error('XState no longer tells its small steps one by one.');
  return snapshot;
}
