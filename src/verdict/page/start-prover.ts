/** Starts the worker that proves; its code is fetched with the first question. */

import type { Prover } from './proof-desk.ts';

export function startProver(): Prover {
  return new Worker(new URL('../worker/prove-worker.ts', import.meta.url), { type: 'module' });
}
