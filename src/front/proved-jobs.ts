/**
 * Knows which jobs were proved before they were begun on this device. Any other that is to be led on, one that was taken
 * in from a file above all, is proved first.
 */

import type { KeptRun, RunHead } from '../bench/ports.ts';
import type { Secrets } from '../logbook/index.ts';
import type { ProofJob } from '../proof/index.ts';
import type { Language } from '../texts/index.ts';

export interface ProvedJobs {
  /** The job of this run was proved on this page. */
  note(head: JobOfRun): Promise<void>;
  /** Whether it was proved here, or is by a walk of now. The texts of the run match its key: that was looked at before. */
  isProved(kept: Pick<KeptRun, 'head' | 'source'>, language: Language): Promise<boolean>;
}

type JobOfRun = Pick<RunHead, 'sourceKey' | 'inputs'>;

export function openProvedJobs(
  secrets: Pick<Secrets, 'mark' | 'isMarked'>,
  prove: (job: ProofJob) => Promise<boolean>,
): ProvedJobs {
  const note = (head: JobOfRun) => secrets.mark(markOf(head));
  return {
    note,
    async isProved({ head, source: { flow, kind, card } }, language) {
      if (await secrets.isMarked(markOf(head))) return true;
      const proved = await prove({ flow, kind, card, inputs: head.inputs, language });
      if (proved) await note(head);
      return proved;
    },
  };
}

/** All that the proof of a job depends on. */
function markOf({ sourceKey, inputs }: JobOfRun): string {
  return JSON.stringify(['proved', sourceKey, Object.entries(inputs).sort()]);
}
