/** What a worker of the page does with one message: reads nothing, keeps its memory, and can be stopped. */

import { type Card, compileJob, type Flow, type JobInputs } from '../flow/index.ts';
import type { Memory } from './memory.ts';
import type { Proof, Watch } from './proof.ts';
import { prove } from './prove.ts';
import { Cancelled } from './walk.ts';

export interface ProofJob {
  readonly flow: Flow;
  readonly card: Card;
  readonly inputs?: JobInputs;
}

export type ProofJobResult =
  | { readonly ok: true; readonly proof: Proof }
  /** The numbers cannot be worked out: one sentence each. */
  | { readonly ok: false; readonly faults: readonly string[] }
  | { readonly ok: false; readonly cancelled: true };

/** Compiles and proves; `watch` is told of progress, and asked whether to go on, between steps. */
export function proveJob(
  { flow, card, inputs }: ProofJob,
  memory: Memory,
  watch: Watch = {},
): ProofJobResult {
  const compiled = compileJob(flow, card, inputs);
  if (!compiled.ok) return compiled;
  try {
    return { ok: true, proof: prove(compiled.job, { ...watch, memory }) };
  } catch (error) {
    if (error instanceof Cancelled) return { ok: false, cancelled: true };
    throw error;
  }
}
