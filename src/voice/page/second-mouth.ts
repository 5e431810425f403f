/** A mouth with another behind it: a line that the first cannot say is said by the second. */
import type { Mouth } from '../../bench/ports.ts';

/** After so many failures in a row the first is not tried again: each costs the person seconds of silence. */
const MOST_FAILURES = 2;

/** `second` is made when it is first needed. */
export function secondMouth(first: Mouth, second: () => Mouth): Mouth {
  let failures = 0;
  let other: Mouth | undefined;
  let lines = 0;
  return {
    name: first.name,
    async say(line, manner) {
      const mine = ++lines;
      if (failures < MOST_FAILURES) {
        const end = await first.say(line, manner);
        failures = end === 'failed' ? failures + 1 : 0;
        if (end !== 'failed') return end;
        // It failed after it was hushed, or another line was begun: too late for this one.
        if (mine !== lines) return 'cut';
      }
      other ??= second();
      return other.say(line, manner);
    },
    cue: (cue) => first.cue(cue),
    hush() {
      lines++;
      first.hush();
      other?.hush();
    },
  };
}
