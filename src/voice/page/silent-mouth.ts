/** A mouth without sound: for tests, and for machines with no voice, where the screen is read. */
import type { Clock, Mouth, SayEnd } from '../../bench/ports.ts';

/** About 200 words a minute, a common reading pace (common practice, no source). */
const MS_PER_WORD = 300;
const SHORTEST_MS = 400;

export interface SilentMouth extends Mouth {
  /** Every line it was given, in order. */
  readonly lines: readonly string[];
}

/** `pace` is `reading` (a line takes as long as reading it) or `at-once`. */
export function silentMouth(clock: Clock, pace: 'reading' | 'at-once' = 'reading'): SilentMouth {
  const lines: string[] = [];
  let cut = () => {};
  return {
    name: 'screen only, no sound',
    lines,
    say(line) {
      cut();
      lines.push(line);
      if (pace === 'at-once') return Promise.resolve('said');
      return new Promise<SayEnd>((resolve) => {
        const cancel = clock.after(readingTime(line), () => resolve('said'));
        cut = () => {
          cancel();
          resolve('cut');
        };
      });
    },
    async cue() {},
    hush() {
      cut();
      cut = () => {};
    },
  };
}

function readingTime(line: string): number {
  return Math.max(SHORTEST_MS, MS_PER_WORD * line.split(/\s+/).length);
}
