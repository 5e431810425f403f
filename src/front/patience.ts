/** Makes whoever guesses passphrases wait: longer each time, until one is right. */

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

/** It lives as long as the page: what slows a guesser for good is the passphrase's own derivation. */
export function openPatience(now: () => number): Patience {
  let tries = 0;
  let until = 0;
  return {
    wait: () => Math.max(0, until - now()),
    wrong() {
      tries += 1;
      if (tries < FREE) return;
      until = now() + Math.min(LONGEST_WAIT, FIRST_WAIT * 2 ** (tries - FREE));
    },
    right() {
      tries = 0;
      until = 0;
    },
  };
}
