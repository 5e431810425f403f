/** Proves one flow both ways, and tells how the two differ. */

import { shippedCards } from '../../src/cli/flow-files.ts';
import { compileJob, type Job, readFlow } from '../../src/flow/index.ts';
import { type Memory, type Proof, prove, walkPlainly } from '../../src/proof/index.ts';
import { tinyKind } from './tiny-kind.ts';

const kinds = new Map([['lathe', tinyKind()]]);
const card = shippedCards().find((one) => one.machineKind === 'lathe');

/** The job of a flow value; nothing when the reader refuses it. */
export function jobOf(value: unknown): Job | undefined {
  const read = readFlow('random', JSON.stringify(value), kinds);
  if (!read.ok || !card) return undefined;
  const compiled = compileJob(read.flow, card);
  return compiled.ok ? compiled.job : undefined;
}

export type Compared =
  | 'same'
  | 'refused'
  | 'too large to walk plainly'
  | { readonly differs: string };

/** `most`: situations that the plain walk may take. */
export function compare(value: unknown, most: number, memory: Memory): Compared {
  const job = jobOf(value);
  if (!job) return 'refused';
  const plain = walkPlainly(job, most);
  if (plain.reason !== undefined) return 'too large to walk plainly';
  const reduced = prove(job, { memory });
  const [a, b] = [toldShort(plain), toldShort(reduced)];
  return a === b ? 'same' : { differs: `plain:   ${a}\nreduced: ${b}` };
}

/** Verdict, and each broken claim; with the length of the shortest path. */
function toldShort({ verdict, problems, reason }: Proof): string {
  const claims = new Map<string, number>();
  for (const { claim, events } of problems) {
    const length = events?.length ?? -1;
    const old = claims.get(claim);
    claims.set(claim, old === undefined || (length >= 0 && length < old) ? length : old);
  }
  const told = [...claims].sort().map(([claim, length]) => `${claim} ${length}`);
  return [verdict, reason ?? '', ...told].join(', ');
}
