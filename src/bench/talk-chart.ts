/** What answer is waited for, and how often nothing was understood. Pure. */

import { assign, initialTransition, type SnapshotFrom, setup, transition } from 'xstate';

/** After this many misses in a row the keys are offered and the asking stops. */
export const askAgainLimit = 2;

export interface PendingNumber {
  /** As it was read, in the unit of the reading on this machine. */
  readonly value: number;
  readonly unit: string;
  readonly decimals: number;
  /** In the base unit of its quantity. */
  readonly base: number;
  /** The words it was heard in, for the record. */
  readonly heard: string;
}

export type TalkEvent =
  | { readonly type: 'number'; readonly pending: PendingNumber; readonly far: boolean }
  /** The number was taken, given up, or the step it was for is left. */
  | { readonly type: 'answered' }
  | { readonly type: 'understood' }
  | { readonly type: 'missed' };

interface TalkContext {
  readonly misses: number;
  readonly pending: PendingNumber | null;
}

export const talkChart = setup({
  types: { context: {} as TalkContext, events: {} as TalkEvent },
  guards: {
    far: ({ event }) => event.type === 'number' && event.far,
  },
  actions: {
    keep: assign(({ event }) => (event.type === 'number' ? { pending: event.pending } : {})),
    drop: assign(() => ({ pending: null })),
    miss: assign(({ context }) => ({ misses: Math.min(context.misses + 1, askAgainLimit + 1) })),
    forgive: assign(() => ({ misses: 0 })),
  },
}).createMachine({
  id: 'talk',
  type: 'parallel',
  context: { misses: 0, pending: null },
  states: {
    answer: {
      initial: 'none',
      on: { answered: { target: '.none', actions: ['drop', 'forgive'] } },
      states: {
        none: { on: { number: numberArrows() } },
        readBack: { on: { number: numberArrows() } },
        /** Far from what was expected: only "keep" or another number goes on. */
        questioned: { on: { number: numberArrows() } },
      },
    },
    misses: {
      initial: 'counting',
      states: {
        counting: { on: { missed: { actions: 'miss' }, understood: { actions: 'forgive' } } },
      },
    },
  },
});

function numberArrows() {
  return [
    { guard: 'far' as const, target: '#talk.answer.questioned', actions: 'keep' as const },
    { target: '#talk.answer.readBack', actions: 'keep' as const },
  ];
}

export type TalkSnapshot = SnapshotFrom<typeof talkChart>;

export function beginTalk(): TalkSnapshot {
  return initialTransition(talkChart)[0];
}

export function stepTalk(snapshot: TalkSnapshot, event: TalkEvent): TalkSnapshot {
  return transition(talkChart, snapshot, event)[0];
}

export function answerState(talk: TalkSnapshot): 'none' | 'readBack' | 'questioned' {
  return talk.value.answer;
}
