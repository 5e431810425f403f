/** One run, live on the Bench: the session joined to what the screens draw. */

import {
  type Notice,
  openSession,
  type RunState,
  type RunStep,
  type SessionWorld,
} from '../bench/index.ts';
import type { LiveRun } from '../screens/world.ts';

export interface LiveSession extends LiveRun {
  readonly session: Awaited<ReturnType<typeof openSession>>;
}

/** Opens the session and tells subscribers of every change. `left` is called once the person goes. */
export async function openLiveRun(
  first: RunStep,
  world: Omit<SessionWorld, 'show'>,
  left: () => Promise<void>,
): Promise<LiveSession> {
  const subscribers = new Set<() => void>();
  let now: { state: RunState; notice: Notice } = {
    state: first.state,
    notice: { sound: 'deaf', trouble: null, advice: null, level: null },
  };
  const session = await openSession(first, {
    ...world,
    show(state, notice) {
      now = { state, notice };
      for (const changed of subscribers) changed();
    },
  });
  return {
    session,
    current: () => now,
    subscribe(changed) {
      subscribers.add(changed);
      return () => subscribers.delete(changed);
    },
    heard(text, from) {
      const at = world.clock.now();
      void session.heard({ text, alternatives: [], confidence: 1, from, at });
    },
    giveUp: () => void session.giveUp(),
    repeat: () => session.repeat(),
    async leave() {
      await session.close();
      await left();
    },
  };
}
