/** Makes whoever guesses passphrases wait: longer each time, until one is right. A reload shortens no wait. */

import { z } from 'zod';

/** Everybody mistypes. */
const FREE = 3;
const FIRST_WAIT = 10_000;
const LONGEST_WAIT = 300_000;

export interface Patience {
  /** Milliseconds until the next try counts. */
  wait(): number;
  wrong(): void;
  right(): void;
}

/** Where the count outlives the page. What slows a guesser for good is the passphrase's own derivation. */
export interface PatienceMemory {
  get(): string | null;
  set(text: string): void;
}

const countShape = z.strictObject({
  tries: z.int().nonnegative(),
  until: z.number().nonnegative(),
});
type Count = z.infer<typeof countShape>;

/** Without a memory it lives as long as the page. */
export function openPatience(now: () => number, memory?: PatienceMemory): Patience {
  let count = remembered(memory);
  const keep = (next: Count) => {
    count = next;
    memory?.set(JSON.stringify(next));
  };
  return {
    // A clock that was put back makes nobody wait longer than the longest wait.
    wait: () => Math.min(LONGEST_WAIT, Math.max(0, count.until - now())),
    wrong() {
      const tries = count.tries + 1;
      const wait = tries < FREE ? 0 : Math.min(LONGEST_WAIT, FIRST_WAIT * 2 ** (tries - FREE));
      keep({ tries, until: wait === 0 ? count.until : now() + wait });
    },
    right: () => keep({ tries: 0, until: 0 }),
  };
}

/** What cannot be read counts as nothing: whoever can change it can clear it as well. */
function remembered(memory: PatienceMemory | undefined): Count {
  const none = { tries: 0, until: 0 };
  try {
    const read = countShape.safeParse(JSON.parse(memory?.get() ?? 'null'));
    return read.success ? read.data : none;
  } catch {
    return none;
  }
}
