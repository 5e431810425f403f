/** What is said of a job whose first step never comes to rest by itself: nothing of it can be walked. */

import { beginJob, endStep, type Job } from '../flow/index.ts';
import type { Proof } from './proof.ts';

/** Both walks say the same of a job whose first step goes round by itself. */
export function neverBegins(job: Job, message: string): Proof {
  const step = job.flow.file.steps[0]?.id ?? endStep;
  const problems = [{ claim: 'FORMAT-SETTLES', step, message }];
  return { verdict: 'broken', problems, places: 0, states: 0, transitions: 0 };
}

/** XState tells so in the first snapshot, or throws. Nothing where the job begins. */
export function whyNeverBegins(job: Job): string | undefined {
  try {
    const { status, error } = beginJob(job);
    return status === 'error' ? String(error) : undefined;
  } catch (error) {
    return String(error);
  }
}
