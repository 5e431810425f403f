/** Says what is wrong in the language of the flow. */

import type { Job } from '../flow/index.ts';
import { type Piece, worded, wordedIn } from '../texts/index.ts';

/** Tag of a sentence for whoever reads the verdict: tell(job)`No way leads to step "${id}".` */
export function tell({ flow }: Pick<Job, 'flow'>) {
  return (text: TemplateStringsArray, ...values: readonly Piece[]): string =>
    wordedIn(flow.language, worded(text, ...values));
}
