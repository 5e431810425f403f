/** An ear fed by a function call: for tests, and for lines that come from a key, a button or a gauge. */
import type { Clock, Deafness, Ear, EarReport, Heard, ListenFor } from '../../bench/ports.ts';

export interface ScriptedEar extends Ear {
  /** Hears one line, as if it had been spoken. False when the ear is shut or closed and dropped it. */
  hear(text: string, from?: Heard['from'], confidence?: number): boolean;
  /** Hears sound that matches nothing. */
  hearNoise(text?: string): boolean;
  /** Goes deaf, as a real ear would. */
  goDeaf(deafness: Deafness): void;
  /** Is over it. */
  hearAgain(): void;
  /** What it was last told to listen for. */
  readonly words: ListenFor;
}

/** Makes the ear. It opens at once and drops what comes while it is shut, but for what may break in. */
export function scriptedEar(clock: Clock): ScriptedEar {
  let words: ListenFor = { phrases: [] };
  let report: ((report: EarReport) => void) | undefined;
  let isShut = false;
  let still: readonly string[] = [];
  const give = (what: EarReport): boolean => {
    const breaksIn = what.kind === 'heard' && still.includes(what.heard.text);
    if (!report || (isShut && !breaksIn)) return false;
    report(what);
    return true;
  };
  return {
    name: 'keys only',
    soundLeavesDevice: 'no',
    get words() {
      return words;
    },
    async open(to) {
      report = to;
      isShut = false;
      report({ kind: 'listening' });
    },
    listenFor(next) {
      words = next;
    },
    async shut(meanwhile) {
      isShut = true;
      still = meanwhile?.still ?? [];
    },
    async reopen() {
      isShut = false;
    },
    async close() {
      report = undefined;
    },
    hear(text, from = 'script', confidence = 1) {
      const heard = { text, alternatives: [], confidence, from, at: clock.now() };
      return give({ kind: 'heard', heard });
    },
    hearNoise: (text = '') => give({ kind: 'unclear', text }),
    goDeaf(deafness) {
      report?.({ kind: 'deaf', deafness });
    },
    hearAgain: () => report?.({ kind: 'listening' }),
  };
}
