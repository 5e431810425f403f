/** One recognition session, from start to end, which always ends whatever the browser does. */
import type { Clock } from '../../bench/ports.ts';
import type { Recognition } from './recognition.ts';
import type { SessionEnd } from './recognition-policy.ts';
import { type Reading, resultReader, type Spoken } from './result-reader.ts';

export interface SessionListener {
  started(): void;
  spoken(spoken: Spoken): void;
  unclear(): void;
  /** Comes exactly once, last. */
  ended(end: SessionEnd): void;
}

export interface Session {
  /** Asks the browser to drop the session; `ended` follows within a second. */
  abort(): void;
}

/** The browser gives no promise about any of these, so each wait has a limit of its own. */
const START_LIMIT_MS = 5_000;
const AUDIO_LIMIT_MS = 3_000;
const RUN_LIMIT_MS = 60_000;
const END_AFTER_ERROR_MS = 500;
const END_AFTER_ABORT_MS = 800;

/**
 * Starts the recogniser, which must be a fresh object: an old one keeps tracks and late events.
 * Continuous mode is not used: it ends by itself after a minute or two, and is slower with finals.
 */
export function startSession(
  recogniser: Recognition,
  clock: Clock,
  listener: SessionListener,
): Session {
  return new RunningSession(recogniser, clock, listener);
}

class RunningSession implements Session {
  private readonly read = resultReader();
  private over = false;
  private outcome: SessionEnd = { kind: 'quiet' };
  private pending: { readonly spoken: Spoken; readonly cancel: () => void } | undefined;
  private cancelLimit = () => {};
  private lastDelivered = '';

  constructor(
    private readonly recogniser: Recognition,
    private readonly clock: Clock,
    private readonly listener: SessionListener,
  ) {
    this.listen();
    this.limit(START_LIMIT_MS, { kind: 'stuck' });
    const problem = tryCall(() => recogniser.start());
    if (problem) this.limit(0, problem);
  }

  abort(): void {
    if (this.over) return;
    this.dropPending();
    this.limit(END_AFTER_ABORT_MS, { kind: 'quiet' });
    tryCall(() => this.recogniser.abort());
  }

  private listen(): void {
    const { recogniser } = this;
    recogniser.onstart = () => {
      this.limit(AUDIO_LIMIT_MS, { kind: 'stuck' });
      this.listener.started();
    };
    recogniser.onaudiostart = () => this.limit(RUN_LIMIT_MS, { kind: 'quiet' });
    recogniser.onresult = (event) => this.take(this.read(event));
    recogniser.onnomatch = () => this.listener.unclear();
    recogniser.onend = () => this.finish(this.outcome);
    recogniser.onerror = ({ error }) => {
      this.outcome = { kind: 'error', code: error };
      this.limit(END_AFTER_ERROR_MS, this.outcome);
    };
  }

  /** At most one wait runs; when it is over, the session ends like this. */
  private limit(ms: number, end: SessionEnd): void {
    this.cancelLimit();
    this.cancelLimit = this.clock.after(ms, () => this.finish(end));
  }

  private take(reading: Reading): void {
    this.dropPending();
    for (const spoken of reading.spoken) this.deliver(spoken);
    if (!reading.pending) return;
    const { spoken, settleMs } = reading.pending;
    this.pending = { spoken, cancel: this.clock.after(settleMs, () => this.settlePending()) };
  }

  private deliver(spoken: Spoken): void {
    if (spoken.text === this.lastDelivered) return;
    this.lastDelivered = spoken.text;
    this.outcome = { kind: 'heard' };
    this.listener.spoken(spoken);
  }

  private settlePending(): void {
    const waiting = this.pending;
    this.dropPending();
    if (waiting) this.deliver(measured(waiting.spoken));
  }

  private dropPending(): void {
    this.pending?.cancel();
    this.pending = undefined;
  }

  private finish(end: SessionEnd): void {
    if (this.over) return;
    if (end.kind !== 'error') this.settlePending();
    this.over = true;
    this.dropPending();
    this.cancelLimit();
    release(this.recogniser);
    this.listener.ended(end.kind === 'quiet' ? this.outcome : end);
  }
}

/** A browser that gives 0 to the end has no measure of its own: else no gate could ever be answered through it. */
function measured(spoken: Spoken): Spoken {
  return spoken.confidence === 0 ? { ...spoken, confidence: 1 } : spoken;
}

/** `start` throws when a session is active or the page is being left; both are stuck, not fatal. */
function tryCall(call: () => void): SessionEnd | undefined {
  try {
    call();
    return undefined;
  } catch (problem) {
    const refused = problem instanceof Error && problem.name === 'NotAllowedError';
    return refused ? { kind: 'error', code: 'not-allowed' } : { kind: 'stuck' };
  }
}

/** Late events of a dropped session must reach nobody, and its microphone must be let go. */
function release(recogniser: Recognition): void {
  // A session still being checked on the device cannot be aborted yet: it is when it starts.
  recogniser.onstart = () => tryCall(() => recogniser.abort());
  recogniser.onaudiostart = null;
  recogniser.onresult = null;
  recogniser.onnomatch = null;
  recogniser.onerror = null;
  recogniser.onend = null;
  tryCall(() => recogniser.abort());
}
