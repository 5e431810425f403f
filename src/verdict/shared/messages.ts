/** What the page and the worker that proves say to each other. */

import type { ProofJob, ProofJobResult } from '../../proof/index.ts';

export interface ToProver {
  readonly kind: 'prove';
  readonly asked: ProofJob;
}

export type FromProver =
  /** Now and then: places of the chart walked so far. */
  | { readonly kind: 'walking'; readonly places: number }
  | { readonly kind: 'done'; readonly result: ProofJobResult }
  /** It broke down: the reason as the browser gives it. */
  | { readonly kind: 'failed'; readonly reason: string };
