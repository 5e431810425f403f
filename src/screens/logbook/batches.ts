/** Runs put together by batch. Pure. */

import type { RunHead } from '../../bench/index.ts';

/** The id of the batch a run belongs to; a run that was never followed by another piece is alone. */
export function batchOf({ id, batch }: RunHead): string {
  return batch?.id ?? id;
}

/** The pieces of a batch, the first made first. */
export function piecesOf(heads: readonly RunHead[], batch: string): readonly RunHead[] {
  return heads
    .filter((head) => batchOf(head) === batch)
    .sort((one, other) => numberOf(one) - numberOf(other));
}

/** 1 for the first of a batch, which was no batch when it was begun. */
export function numberOf({ batch }: RunHead): number {
  return batch?.piece ?? 1;
}

/** Batches with more than one piece, by their id: how many pieces each has. */
export function batchSizes(heads: readonly RunHead[]): ReadonlyMap<string, number> {
  const sizes = new Map<string, number>();
  for (const { batch } of heads) {
    if (batch) sizes.set(batch.id, (sizes.get(batch.id) ?? 1) + 1);
  }
  return sizes;
}
