/** Who may sound: the mouth speaks or the ear is open, never both. Pure: the session carries out what it decides. */

import { assign, initialTransition, type SnapshotFrom, setup, transition } from 'xstate';
import type { Deafness } from './ports.ts';

export type SoundEvent =
  | { readonly type: 'say' }
  | { readonly type: 'said' }
  /** The tail after the last sound is over: what the room echoes is no longer ours. */
  | { readonly type: 'quiet' }
  | { readonly type: 'deaf'; readonly deafness: Deafness }
  | { readonly type: 'hearing' };

interface SoundContext {
  readonly deafness: Deafness | null;
}

export const soundChart = setup({
  types: { context: {} as SoundContext, events: {} as SoundEvent },
  actions: {
    goDeaf: assign(({ event }) => (event.type === 'deaf' ? { deafness: event.deafness } : {})),
    hear: assign(() => ({ deafness: null })),
  },
}).createMachine({
  id: 'sound',
  type: 'parallel',
  context: { deafness: null },
  states: {
    mouth: {
      initial: 'silent',
      states: {
        silent: { on: { say: 'speaking' } },
        speaking: { on: { said: 'tail' } },
        tail: { on: { quiet: 'silent', say: 'speaking' } },
      },
    },
    ear: {
      initial: 'off',
      states: {
        off: { on: { hearing: { target: 'on', actions: 'hear' }, deaf: { actions: 'goDeaf' } } },
        on: { on: { deaf: { target: 'off', actions: 'goDeaf' } } },
      },
    },
  },
});

export type SoundSnapshot = SnapshotFrom<typeof soundChart>;

export function beginSound(): SoundSnapshot {
  return initialTransition(soundChart)[0];
}

export function stepSound(snapshot: SoundSnapshot, event: SoundEvent): SoundSnapshot {
  return transition(soundChart, snapshot, event)[0];
}

/** The ear is open only when nothing of ours can still be heard. */
export function earOpen(sound: SoundSnapshot): boolean {
  return sound.value.mouth === 'silent' && sound.value.ear === 'on';
}

/** What the person is shown: speaking, listening, or deaf. */
export function soundShown(sound: SoundSnapshot): 'speaking' | 'listening' | 'deaf' {
  if (sound.value.mouth !== 'silent') return 'speaking';
  return sound.value.ear === 'on' ? 'listening' : 'deaf';
}
