/** What to do after a recognition session has ended: again, wait, or own up to being deaf. Pure. */
import type { WhyDeaf } from './deafness.ts';

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
  | { readonly kind: 'deaf'; readonly why: WhyDeaf };

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
  if (end.kind === 'stuck') return count(troubles, 'other', 'noSign');
  return judgeError(troubles, end.code, visible);
}

function judgeError(troubles: Troubles, code: string, visible: boolean): Judgement {
  switch (code) {
    case 'no-speech':
      return { troubles: clear(troubles), next: AGAIN };
    case 'aborted':
      return visible
        ? count(troubles, 'aborted', 'taken')
        : { troubles, next: { kind: 'when-visible' } };
    case 'network':
      return count(troubles, 'network', 'noNetwork');
    case 'audio-capture':
      return count(troubles, 'device', 'noUsableMicrophone');
    case 'phrases-not-supported':
      return { troubles: { ...troubles, phrasesOff: true }, next: AGAIN };
    default:
      return judgeRefusal(troubles, code);
  }
}

function judgeRefusal(troubles: Troubles, code: string): Judgement {
  const why = REFUSALS[code];
  if (why) return { troubles, next: { kind: 'deaf', why } };
  return count(troubles, 'other', 'noSign');
}

type Counted = 'network' | 'aborted' | 'device' | 'other';

function count(troubles: Troubles, which: Counted, why: WhyDeaf): Judgement {
  const next: Troubles = { ...troubles, [which]: troubles[which] + 1 };
  if (next[which] < LIMIT) return { troubles: next, next: AGAIN };
  return { troubles: next, next: { kind: 'deaf', why } };
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

const REFUSALS: Readonly<Record<string, WhyDeaf>> = {
  'not-allowed': 'refused',
  'service-not-allowed': 'noService',
  'language-not-supported': 'noPack',
};
