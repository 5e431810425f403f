/** Proves one job. */

import type { Job } from '../flow/index.ts';
import type { Proof } from './proof.ts';
import { walkPlainly } from './walk-plain.ts';

export function prove(job: Job): Proof {
  return walkPlainly(job);
}
