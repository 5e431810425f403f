/** One run as it stands: the job, where its chart is, and whose turn it is. A plain value. */

import type { FlowSnapshot, Job, Pace } from '../flow/index.ts';
import type { EarlierPieces } from './batch.ts';
import type { AskedQuestion } from './check-question.ts';
import type { SpeechManner } from './manner-run.ts';
import type { KeptReading, RunEntry, RunHead } from './ports.ts';
import type { TalkSnapshot } from './talk-chart.ts';

export interface RunState {
  /** With its numbers as they are now: a change of tool, material or speed makes it anew. */
  readonly job: Job;
  readonly head: RunHead;
  readonly snapshot: FlowSnapshot;
  readonly talk: TalkSnapshot;
  /** How much is told; the gates are the same at every pace. */
  readonly pace: Pace;
  /** Reasons that were given and questions that were put: "step:mount", "fact:guard", "question:mount". */
  readonly explained: readonly string[];
  /** A check question that waits for its answer; any word that moves the job leaves it behind. */
  readonly question: AskedQuestion | null;
  /** The part of the machine that was asked about, until the job moves. */
  readonly lit?: string;
  /** Number of the next entry. */
  readonly seq: number;
  readonly readings: readonly KeptReading[];
  /** Ids of the troubles that what was cut so far may have shown. */
  readonly cutShows: readonly string[];
  /** What the pieces made before this one measured, when it is one of a batch. */
  readonly batch?: { readonly earlier: EarlierPieces };
  /** What "wrong" would go back to; nothing when the last word cannot be taken back. */
  readonly undo: {
    readonly job: Job;
    readonly snapshot: FlowSnapshot;
    readonly readings: readonly KeptReading[];
  } | null;
  /** The last line that told something, for "repeat". */
  readonly lastLine: string;
  /** The ear in use takes free words, so that a note can be spoken. */
  readonly hearsFreely?: boolean;
  /** A question to the Slate is awaited; so many were not understood. */
  readonly slateAsked?: number;
  /** A list of rare words was opened by its lead word. */
  readonly opened?: string;
  /** How the mouth speaks now. */
  readonly manner?: SpeechManner;
  /** Number of the entry that asked for the keyboard, for a note. */
  readonly noteAsked?: number;
  /** What "why that" is about: the figure told last, or the line that tells what stands behind an answer. */
  readonly told?: { readonly figure: string } | { readonly why: string };
}

/** What the shell must do, in this order. An entry is kept before anything after it is done. */
export type Effect =
  | { readonly kind: 'append'; readonly entry: RunEntry }
  | {
      readonly kind: 'finish';
      readonly status: 'finished' | 'given-up';
      readonly endedAt: number;
      readonly readings: readonly KeptReading[];
    }
  /** From now on the mouth speaks so. */
  | { readonly kind: 'manner'; readonly manner: SpeechManner }
  | { readonly kind: 'cue'; readonly cue: 'heard' | 'unclear' | 'stop' }
  /** `urgent` cuts short what is being said. */
  | { readonly kind: 'say'; readonly line: string; readonly urgent?: boolean };

export interface RunStep {
  readonly state: RunState;
  readonly effects: readonly Effect[];
}
