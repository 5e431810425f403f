/** One run, live on the Bench: the session joined to what the screens draw. */

import {
  type Notice,
  openSession,
  type RunState,
  type RunStep,
  type SessionWorld,
} from '../bench/index.ts';
import type { Ledger } from '../bench/ports.ts';
import { positionOf } from '../flow/index.ts';
import type { Credential, LiveRun } from '../screens/world.ts';
import type { Releases } from './releases.ts';

export interface LiveSession extends LiveRun {
  readonly session: Awaited<ReturnType<typeof openSession>>;
}

/** Opens the session and tells subscribers of every change. `left` is called once the person goes. */
export async function openLiveRun(
  first: RunStep,
  world: Omit<SessionWorld, 'show'> & { readonly releases: Releases },
  left: () => Promise<void>,
): Promise<LiveSession> {
  const subscribers = new Set<() => void>();
  let now: { state: RunState; notice: Notice } = {
    state: first.state,
    notice: { sound: 'deaf', trouble: null, advice: null, level: null },
  };
  let said = first.state.lastLine;
  const session = await openSession(first, {
    ...world,
    ledger: noting(world.ledger, (line) => {
      said = line;
    }),
    show(state, notice) {
      now = { state, notice };
      for (const changed of subscribers) changed();
    },
  });
  return {
    session,
    current: () => ({ ...now, said }),
    subscribe(changed) {
      subscribers.add(changed);
      return () => subscribers.delete(changed);
    },
    heard(text, from) {
      const at = world.clock.now();
      void session.heard({ text, alternatives: [], confidence: 1, from, at });
    },
    note: (text) => void session.note(text),
    release: (by) => release(session, world.releases, by),
    giveUp: () => void session.giveUp(),
    repeat: () => session.repeat(),
    async leave() {
      await session.close();
      await left();
    },
  };
}

/** What was typed goes to the checker and nowhere else; what comes of it is on record either way. */
async function release(
  session: LiveSession['session'],
  releases: Releases,
  by: Credential,
): Promise<string | null> {
  const { head, snapshot } = session.state();
  const made = await releases.make(head.id, positionOf(snapshot).step, by);
  if (made.ok) await session.release(made.release);
  else await session.releaseRefused(made.byName, made.why);
  return made.ok ? null : made.why;
}

/** The same ledger; tells what was said back to each word, for the screen to show. */
function noting(ledger: Ledger, told: (line: string) => void): Ledger {
  return {
    start: (head, source) => ledger.start(head, source),
    async append(entry) {
      await ledger.append(entry);
      if (entry.said !== undefined) told(entry.said);
    },
    finish: (runId, end) => ledger.finish(runId, end),
    read: (runId) => ledger.read(runId),
    list: () => ledger.list(),
  };
}
