/** The outcome of a proof. */

import type { Facts, FlowEvent } from '../flow/index.ts';
import type { Coverage } from './coverage.ts';

/**
 * `proved`: every reachable situation was walked, and every claim held.
 * `broken`: a claim does not hold; the shortest path to it is told.
 * `too-large`: the walk came to its limit; nothing is said of what was not walked.
 * `unseeable`: the chart looked at something that the walk does not follow.
 */
export type Verdict = 'proved' | 'broken' | 'too-large' | 'unseeable';

export interface Problem {
  readonly claim: string;
  readonly step: string;
  /** What is wrong, for a machinist. */
  readonly message: string;
  /** The shortest way there, from the beginning of the job; missing for claims about the whole flow. */
  readonly events?: readonly FlowEvent[];
  /** What is believed there. */
  readonly facts?: Facts;
}

export interface Walked {
  /** Places of the chart come to: a state of a step, and where a hold goes on. */
  readonly places: number;
  /** Situations: a place with facts, readings and the rest. */
  readonly states: number;
  readonly transitions: number;
}

export interface Proof extends Walked {
  readonly verdict: Verdict;
  /** One for each broken claim at each step. */
  readonly problems: readonly Problem[];
  /** Counts how much of the charts of its steps was walked; none where the walk did not come to its end. */
  readonly coverage?: () => Coverage;
  /** For too-large and unseeable: the limit that was come to, or what was looked at. */
  readonly reason?: string;
}

/** What a long proof tells, and how it is stopped. */
export interface Watch {
  /** Called now and then with the number of places walked. */
  readonly progress?: (places: number) => void;
  readonly cancelled?: () => boolean;
}
