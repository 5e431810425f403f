/** Judges the mutants of one flow, and tells the score. */

import type { Card, Flow } from '../flow/index.ts';
import { type JudgedEdit, type JudgedMutant, judgeMutants } from '../proof/index.ts';
import { type Score, scoreOf } from './mutant-score.ts';

export interface MutantScore extends Score {
  readonly flow: string;
}

/** The score, and every edit as it was judged: the mutants of the machine kind are judged by these. */
export function scoreMutants(
  flow: Flow,
  card: Card,
  told: (done: number, one: JudgedMutant) => void = () => {},
): { readonly score: MutantScore; readonly edits: readonly JudgedEdit[] } {
  const begun = performance.now();
  const edits: JudgedEdit[] = [];
  for (const judged of judgeMutants(flow, card)) told(edits.push({ flow, judged }), judged);
  const judged = edits.map((edit) => edit.judged);
  return { score: { flow: flow.file.id, ...scoreOf(judged, begun) }, edits };
}
