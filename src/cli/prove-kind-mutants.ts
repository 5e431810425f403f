/** Judges the mutants of one machine kind by its flows, and tells the score. */

import type { Card, Flow, MachineKind } from '../flow/index.ts';
import { type JudgedEdit, type JudgedKindMutant, judgeKindMutants } from '../proof/index.ts';
import { type Score, scoreOf } from './mutant-score.ts';

export interface KindScore extends Score {
  readonly kind: string;
  readonly flows: readonly string[];
}

/** `told` is called after each mutant: all of them together take about a minute. */
export function scoreKind(
  kind: MachineKind,
  card: Card,
  edits: readonly JudgedEdit[],
  told: (done: number, one: JudgedKindMutant) => void = () => {},
): KindScore {
  const begun = performance.now();
  const flows: readonly Flow[] = [...new Set(edits.map(({ flow }) => flow))];
  const judged: JudgedKindMutant[] = [];
  for (const one of judgeKindMutants({ kind, flows, card, edits })) told(judged.push(one), one);
  const files = flows.map((flow) => flow.file.id);
  return { kind: kind.id, flows: files, ...scoreOf(judged, begun) };
}
