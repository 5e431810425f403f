/** Which tab leads a run: only one may, and a second one is told. */

import type { RunOwnership } from '../bench/ports.ts';
import { openCalls } from './tab-calls.ts';

export interface TabOwnership extends RunOwnership {
  /**
   * How sure `claim` is: "locked" by the browser; "asked" among the tabs, where one that sleeps
   * cannot answer; "alone" when this browser lets tabs do neither, and nobody was asked.
   */
  readonly surety: 'locked' | 'asked' | 'alone';
  /**
   * Takes the run from a tab that holds it but no longer answers, such as one that a phone has put
   * to sleep; that tab hears of it when it wakes. False when a tab that leads it does answer.
   */
  takeOver(runId: string): Promise<boolean>;
  /** True when any tab leads any run, as far as can be known. */
  anyLed(): Promise<boolean>;
  close(): void;
}

/** What of the browser is needed; each may be missing. */
export interface TabWorld {
  readonly locks: Pick<LockManager, 'request' | 'query'> | undefined;
  readonly channel: BroadcastChannel | undefined;
  /** Milliseconds given to other tabs to answer. */
  readonly patience: number;
}

const PREFIX = 'followrest-run/';

/** @param onLost hears of a run that another tab has taken over: this tab must stop leading it */
export function openOwnership(
  onLost: (runId: string) => void,
  world: TabWorld = worldOfBrowser(),
): TabOwnership {
  const { locks, channel } = world;
  /** Runs this tab leads, each with what lets go of it. */
  const led = new Map<string, () => void>();
  const calls = openCalls(channel, world.patience, (runId) => led.has(runId));
  const lead = (runId: string, letGo: () => void) => led.set(runId, letGo);
  const lose = (runId: string) => {
    if (led.delete(runId)) onLost(runId);
  };
  const claim = async (runId: string, steal = false): Promise<boolean> => {
    if (led.has(runId)) return true;
    if (locks !== undefined) return lock(locks, runId, steal, lead, lose);
    if (await calls.someoneLeads(runId)) return false;
    lead(runId, () => undefined);
    return true;
  };
  const release = (runId: string) => {
    led.get(runId)?.();
    led.delete(runId);
  };
  return {
    surety: locks !== undefined ? 'locked' : channel !== undefined ? 'asked' : 'alone',
    claim: (runId) => claim(runId),
    release,
    takeOver: async (runId) => !(await calls.someoneLeads(runId)) && claim(runId, true),
    anyLed: async () => led.size > 0 || (locks !== undefined && (await anyHeld(locks))),
    close() {
      for (const runId of led.keys()) release(runId);
      channel?.close();
    },
  };
}

/**
 * Never waits for a lock: a tab that a phone has put to sleep would keep it for ever. Resolves
 * once it is known who has it; the lock itself is held until `letGo` is called.
 */
function lock(
  locks: Pick<LockManager, 'request'>,
  runId: string,
  steal: boolean,
  lead: (runId: string, letGo: () => void) => void,
  lose: (runId: string) => void,
): Promise<boolean> {
  return new Promise((known) => {
    const hold = (granted: Lock | null) => {
      if (granted === null) return known(false);
      return new Promise<void>((letGo) => {
        lead(runId, letGo);
        known(true);
      });
    };
    locks.request(PREFIX + runId, steal ? { steal } : { ifAvailable: true }, hold).catch(() => {
      lose(runId);
      known(false);
    });
  });
}

async function anyHeld(locks: Pick<LockManager, 'query'>): Promise<boolean> {
  const { held = [] } = await locks.query();
  return held.some((each) => each.name?.startsWith(PREFIX) === true);
}

function worldOfBrowser(): TabWorld {
  return {
    locks: globalThis.navigator?.locks,
    channel:
      typeof BroadcastChannel === 'undefined' ? undefined : new BroadcastChannel('followrest-tabs'),
    patience: 400,
  };
}
