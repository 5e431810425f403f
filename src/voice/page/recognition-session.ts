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
  const read = resultReader();
  let over = false;
  let outcome: SessionEnd = { kind: 'quiet' };
  let pending: { readonly spoken: Spoken; readonly cancel: () => void } | undefined;
  let cancelLimit = () => {};
  let lastDelivered = '';

  const limit = (ms: number, end: SessionEnd) => {
    cancelLimit();
    cancelLimit = clock.after(ms, () => finish(end));
  };

  const deliver = (spoken: Spoken) => {
    if (spoken.text === lastDelivered) return;
    lastDelivered = spoken.text;
    outcome = { kind: 'heard' };
    listener.spoken(spoken);
  };

  const settlePending = () => {
    const waiting = pending;
    dropPending();
    if (waiting) deliver(waiting.spoken);
  };

  const dropPending = () => {
    pending?.cancel();
    pending = undefined;
  };

  const take = (reading: Reading) => {
    dropPending();
    reading.spoken.forEach(deliver);
    if (!reading.pending) return;
    const { spoken, settleMs } = reading.pending;
    pending = { spoken, cancel: clock.after(settleMs, settlePending) };
  };

  function finish(end: SessionEnd): void {
    if (over) return;
    if (end.kind !== 'error') settlePending();
    over = true;
    dropPending();
    cancelLimit();
    release(recogniser);
    listener.ended(end.kind === 'quiet' ? outcome : end);
  }

  recogniser.onstart = () => {
    limit(AUDIO_LIMIT_MS, { kind: 'stuck' });
    listener.started();
  };
  recogniser.onaudiostart = () => limit(RUN_LIMIT_MS, { kind: 'quiet' });
  recogniser.onresult = (event) => take(read(event));
  recogniser.onnomatch = () => listener.unclear();
  recogniser.onend = () => finish(outcome);
  recogniser.onerror = ({ error }) => {
    outcome = { kind: 'error', code: error };
    limit(END_AFTER_ERROR_MS, outcome);
  };

  limit(START_LIMIT_MS, { kind: 'stuck' });
  const problem = tryCall(() => recogniser.start());
  if (problem) limit(0, problem);

  return {
    abort: () => {
      if (over) return;
      dropPending();
      limit(END_AFTER_ABORT_MS, { kind: 'quiet' });
      tryCall(() => recogniser.abort());
    },
  };
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
