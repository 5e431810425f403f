/** The worker's shell of the prover: one question, one answer, and the page ends it when it is no longer wanted. */

import { proveJob } from '../../proof/index.ts';
import type { FromProver, ToProver } from '../shared/messages.ts';

const between = 100;

const tell = (message: FromProver) => self.postMessage(message);

self.onmessage = ({ data }: MessageEvent<ToProver>) => {
  try {
    tell({ kind: 'done', result: proveJob(data.asked, { progress: tellProgress() }) });
  } catch (problem) {
    tell({ kind: 'failed', reason: problem instanceof Error ? problem.message : String(problem) });
  }
};

/** Told at most ten times a second: messages cost more than the walk between two of them. */
function tellProgress(): (places: number) => void {
  let last = performance.now();
  return (places) => {
    if (performance.now() - last < between) return;
    last = performance.now();
    tell({ kind: 'walking', places });
  };
}
