/** What to do after a recognition session has ended: again, wait, or own up to being deaf. Pure. */
import type { Deafness } from '../../bench/ports.ts';

/** How one session ended, whatever the browser did or failed to do. */
export type SessionEnd =
  | { readonly kind: 'quiet' }
  | { readonly kind: 'heard' }
  | { readonly kind: 'error'; readonly code: string }
  /** The browser went silent on us: no `start`, no sound, or no `end` in time. */
  | { readonly kind: 'stuck' };

/** Troubles in a row; any good session clears them. */
export interface Troubles {
  readonly network: number;
  readonly aborted: number;
  readonly device: number;
  readonly other: number;
  readonly phrasesOff: boolean;
}

export const NO_TROUBLES: Troubles = {
  network: 0,
  aborted: 0,
  device: 0,
  other: 0,
  phrasesOff: false,
};

export type Next =
  | { readonly kind: 'again' }
  | { readonly kind: 'when-visible' }
  | { readonly kind: 'deaf'; readonly deafness: Deafness };

export interface Judgement {
  readonly troubles: Troubles;
  readonly next: Next;
}

const AGAIN: Next = { kind: 'again' };
const LIMIT = 3;

/** Judges the end of a session. `visible` is whether the page can be seen: a hidden page is aborted. */
export function judgeEnd(troubles: Troubles, end: SessionEnd, visible: boolean): Judgement {
  if (end.kind === 'quiet' || end.kind === 'heard')
    return { troubles: clear(troubles), next: AGAIN };
  if (end.kind === 'stuck') return count(troubles, 'other', FAILING_SILENT);
  return judgeError(troubles, end.code, visible);
}

function judgeError(troubles: Troubles, code: string, visible: boolean): Judgement {
  switch (code) {
    case 'no-speech':
      return { troubles: clear(troubles), next: AGAIN };
    case 'aborted':
      return visible
        ? count(troubles, 'aborted', TAKEN)
        : { troubles, next: { kind: 'when-visible' } };
    case 'network':
      return count(troubles, 'network', FAILING_NETWORK);
    case 'audio-capture':
      return count(troubles, 'device', NO_MICROPHONE);
    case 'phrases-not-supported':
      return { troubles: { ...troubles, phrasesOff: true }, next: AGAIN };
    default:
      return judgeRefusal(troubles, code);
  }
}

function judgeRefusal(troubles: Troubles, code: string): Judgement {
  const deafness = REFUSALS[code];
  if (deafness) return { troubles, next: { kind: 'deaf', deafness } };
  return count(troubles, 'other', FAILING_SILENT);
}

type Counted = 'network' | 'aborted' | 'device' | 'other';

function count(troubles: Troubles, which: Counted, limit: Deafness): Judgement {
  const next: Troubles = { ...troubles, [which]: troubles[which] + 1 };
  if (next[which] < LIMIT) return { troubles: next, next: AGAIN };
  return { troubles: next, next: { kind: 'deaf', deafness: limit } };
}

function clear(troubles: Troubles): Troubles {
  return { ...NO_TROUBLES, phrasesOff: troubles.phrasesOff };
}

const SHORTEST_MS = 1_000;
const LONGEST_MS = 16_000;

/** How long to wait before the next start, so that no two starts are less than a second apart. */
export function restartDelay(troubles: Troubles, msSinceLastStart: number): number {
  const inARow = troubles.network + troubles.aborted + troubles.device + troubles.other;
  const apart = Math.min(LONGEST_MS, SHORTEST_MS * 2 ** Math.min(inARow, 10));
  return Math.max(0, apart - msSinceLastStart);
}

const FAILING_NETWORK: Deafness = {
  kind: 'failing',
  sentence:
    'The browser cannot reach its speech service. Use the ear of this page, or keys, until the network is back.',
};
const FAILING_SILENT: Deafness = {
  kind: 'failing',
  sentence:
    'The browser says it is listening but gives no sign of hearing. Use the ear of this page, or keys.',
};
const TAKEN: Deafness = {
  kind: 'taken',
  sentence:
    'Something else keeps taking the microphone: another tab or program. Close it, then try again.',
};
const NO_MICROPHONE: Deafness = {
  kind: 'missing',
  sentence: 'No microphone can be used. Plug one in, or close the program that holds it.',
};
const NO_PACK: Deafness = {
  kind: 'missing',
  sentence:
    'The browser has no English speech pack on this device. Install it, or use another ear.',
};

const REFUSALS: Readonly<Record<string, Deafness>> = {
  'not-allowed': {
    kind: 'refused',
    sentence:
      'The microphone is not allowed for this page. Allow it in the browser beside the address, then open the ear again.',
  },
  'service-not-allowed': {
    kind: 'missing',
    sentence:
      'The browser does not let this page use its speech service. Switch dictation on, or use another ear.',
  },
  'language-not-supported': NO_PACK,
};
