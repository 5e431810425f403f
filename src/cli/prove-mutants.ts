/** Judges the mutants of one flow, and tells the score. */

import type { Card, Flow } from '../flow/index.ts';
import { type JudgedMutant, judgeMutants } from '../proof/index.ts';

export interface MutantScore {
  readonly flow: string;
  /** True when every mutant is caught, or its survival is explained. */
  readonly ok: boolean;
  readonly mutants: number;
  /** The prover breaks on it. */
  readonly broken: number;
  /** The reader has a fault for it: counted as caught. */
  readonly refused: number;
  readonly survivors: readonly { readonly mutant: string; readonly why: string }[];
  /** Caught, of those that are not explained. */
  readonly percent: number;
  readonly ms: number;
}

/** `told` is called after each mutant: all of them together take minutes. */
export function scoreMutants(
  flow: Flow,
  card: Card,
  told: (done: number, one: JudgedMutant) => void = () => {},
): MutantScore {
  const begun = performance.now();
  const judged: JudgedMutant[] = [];
  for (const one of judgeMutants(flow, card)) told(judged.push(one), one);
  const count = (fate: JudgedMutant['fate']) => judged.filter((one) => one.fate === fate).length;
  const survivors = judged
    .filter(({ fate }) => fate === 'survives' || fate === 'open')
    .map(({ mutant, fate, why }) => ({ mutant: mutant.name, why: fate === 'open' ? '' : why }));
  const caught = count('broken') + count('refused');
  const unexplained = survivors.filter(({ why }) => why === '').length;
  return {
    flow: flow.file.id,
    ok: unexplained === 0,
    mutants: judged.length,
    broken: count('broken'),
    refused: count('refused'),
    survivors,
    percent: Math.round((1000 * caught) / (caught + unexplained)) / 10,
    ms: Math.round(performance.now() - begun),
  };
}

export function tellScore({
  flow,
  mutants,
  broken,
  refused,
  survivors,
  percent,
}: MutantScore): string {
  const reasons = new Map<string, string[]>();
  for (const { mutant, why } of survivors) {
    const reason = why === '' ? 'NOT EXPLAINED' : why;
    reasons.set(reason, [...(reasons.get(reason) ?? []), mutant]);
  }
  return [
    `${flow}: ${percent} % of mutants that matter are caught`,
    `  ${mutants} mutants · ${broken} break a claim · ${refused} refused by the reader · ${survivors.length} survive`,
    ...[...reasons].flatMap(([reason, names]) => [
      `  ${reason}`,
      ...names.map((name) => `    ${name}`),
    ]),
  ].join('\n');
}
