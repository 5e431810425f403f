/** What came of many mutants, in numbers, and told to a person. */

import type { Fate } from '../proof/index.ts';

export interface Score {
  /** True when every mutant is caught, or its survival is explained. */
  readonly ok: boolean;
  readonly mutants: number;
  /** The prover breaks on it. */
  readonly broken: number;
  /** The reader has a fault for it: counted as caught. */
  readonly refused: number;
  /** `why` is empty where nothing explains it. */
  readonly survivors: readonly { readonly mutant: string; readonly why: string }[];
  /** Caught, of those that are not explained. */
  readonly percent: number;
  readonly ms: number;
}

interface Judged {
  readonly mutant: { readonly name: string };
  readonly fate: Fate;
  readonly why: string;
}

/** `begun`: when the first was taken up, by `performance.now`. */
export function scoreOf(judged: readonly Judged[], begun: number): Score {
  const count = (fate: Fate) => judged.filter((one) => one.fate === fate).length;
  const survivors = judged
    .filter(({ fate }) => fate === 'survives' || fate === 'open')
    .map(({ mutant, fate, why }) => ({ mutant: mutant.name, why: fate === 'open' ? '' : why }));
  const caught = count('broken') + count('refused');
  const unexplained = survivors.filter(({ why }) => why === '').length;
  const matter = caught + unexplained;
  return {
    ok: unexplained === 0,
    mutants: judged.length,
    broken: count('broken'),
    refused: count('refused'),
    survivors,
    percent: matter === 0 ? 100 : Math.round((1000 * caught) / matter) / 10,
    ms: Math.round(performance.now() - begun),
  };
}

export function tellScore(
  name: string,
  { mutants, broken, refused, survivors, percent, ms }: Score,
): string {
  const reasons = new Map<string, string[]>();
  for (const { mutant, why } of survivors) {
    const reason = why === '' ? 'NOT EXPLAINED' : why;
    reasons.set(reason, [...(reasons.get(reason) ?? []), mutant]);
  }
  const open = reasons.get('NOT EXPLAINED')?.length ?? 0;
  const counts = [
    `${mutants} mutants`,
    `${broken} break a claim`,
    `${refused} refused by the reader`,
    `${survivors.length - open} explained`,
    `${open} open`,
    `${(ms / 1000).toFixed(1)} s`,
  ];
  return [
    `${name}: ${percent} % of mutants that matter are caught`,
    `  ${counts.join(' · ')}`,
    ...[...reasons].flatMap(([reason, names]) => [
      `  ${reason}`,
      ...names.map((name) => `    ${name}`),
    ]),
  ].join('\n');
}
