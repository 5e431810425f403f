/** Proves one flow both ways, and tells how the two differ. */

import { shippedCards } from '../../src/cli/flow-files.ts';
import {
  type Card,
  compileJob,
  type Job,
  type MachineKind,
  readFlow,
} from '../../src/flow/index.ts';
import { type Memory, type Proof, prove, walkPlainly } from '../../src/proof/index.ts';
import { tinyKind } from './tiny-kind.ts';

const tiny = new Map([['lathe', tinyKind()]]);
export const latheCards = shippedCards().filter((one) => one.machineKind === 'lathe');
const [firstCard] = latheCards;

/** The job of a flow value; nothing when the reader refuses it. */
export function jobOf(
  value: unknown,
  card: Card | undefined = firstCard,
  kinds: ReadonlyMap<string, MachineKind> = tiny,
): Job | undefined {
  const read = readFlow('random', JSON.stringify(value), kinds);
  if (!read.ok || !card) return undefined;
  const compiled = compileJob(read.flow, card);
  return compiled.ok ? compiled.job : undefined;
}

export type Compared =
  | { readonly same: 'proved' | 'broken' }
  | { readonly left: 'refused' | 'too large to walk plainly' }
  | { readonly differs: string };

/** `most`: situations that the plain walk may take. `memory`: kept over many flows, or none for a new one. */
export function compare(
  value: unknown,
  most: number,
  memory?: Memory,
  card: Card | undefined = firstCard,
): Compared {
  const job = jobOf(value, card);
  if (!job) return { left: 'refused' };
  const plain = walkPlainly(job, most);
  if (plain.reason !== undefined) return { left: 'too large to walk plainly' };
  const reduced = prove(job, memory ? { memory } : {});
  const [a, b] = [toldShort(plain), toldShort(reduced)];
  if (a !== b) return { differs: `plain:   ${a}\nreduced: ${b}` };
  return { same: plain.verdict === 'proved' ? 'proved' : 'broken' };
}

/** Verdict, every broken claim with its steps, and the length of the shortest path to it. */
export function toldShort({ verdict, problems, reason }: Proof): string {
  const claims = new Map<string, { readonly steps: Set<string>; length: number }>();
  for (const { claim, step, events } of problems) {
    const one = claims.get(claim) ?? { steps: new Set<string>(), length: Number.POSITIVE_INFINITY };
    one.steps.add(step);
    one.length = Math.min(one.length, events?.length ?? Number.POSITIVE_INFINITY);
    claims.set(claim, one);
  }
  const told = [...claims].sort(([a], [b]) => (a < b ? -1 : 1));
  const lines = told.map(
    ([claim, { steps, length }]) => `${claim} at ${[...steps].sort().join(' ')} in ${length}`,
  );
  return [verdict, reason ?? '', ...lines].join('; ');
}
