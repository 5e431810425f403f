/** Only one tab and one ear has the microphone at a time. */

/** Resolves to the release, or null when somebody else has it. Never rejects, never waits. */
export type MicrophoneLock = () => Promise<(() => void) | null>;

const NAME = 'followrest microphone';

/**
 * A lock held across tabs. It never waits for the other holder: a frozen tab keeps its lock for
 * ever. Browsers without locks give every asker the lock; there the browser's own abort is seen.
 */
export function microphoneLock(locks: LockManager | undefined): MicrophoneLock {
  return async () => {
    if (!locks) return () => {};
    return new Promise((answer) => {
      const hold = (lock: Lock | null) =>
        new Promise<void>((release) => {
          answer(lock && release);
          if (!lock) release();
        });
      locks.request(NAME, { ifAvailable: true }, hold).catch(() => answer(null));
    });
  };
}
