/** A clock held in the hand: time moves only when told, and promises are let run in between. */
import type { Clock } from '../../src/bench/ports.ts';

export interface FakeClock extends Clock {
  /** Moves time on by `ms`, running each due call in order and every promise that follows. */
  pass(ms: number): Promise<void>;
}

interface Waiting {
  readonly due: number;
  readonly call: () => void;
}

export function fakeClock(): FakeClock {
  let now = 1_000_000;
  let waiting: Waiting[] = [];
  const settle = async () => {
    for (let i = 0; i < 12; i++) await Promise.resolve();
  };
  return {
    now: () => now,
    after(ms, call) {
      const entry = { due: now + ms, call };
      waiting.push(entry);
      return () => {
        waiting = waiting.filter((other) => other !== entry);
      };
    },
    async pass(ms) {
      const end = now + ms;
      await settle();
      for (;;) {
        const next = waiting.filter((w) => w.due <= end).sort((a, b) => a.due - b.due)[0];
        if (!next) break;
        waiting = waiting.filter((w) => w !== next);
        now = Math.max(now, next.due);
        next.call();
        await settle();
      }
      now = end;
    },
  };
}
