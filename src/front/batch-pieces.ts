/** The pieces of a batch, out of the logbook. */

import type { EarlierPieces, KeptRun, RunHead } from '../bench/index.ts';
import type { Logbook } from '../logbook/index.ts';

type Book = Pick<Logbook, 'list' | 'read'>;

/** Finished runs of the batch that a run belongs to, the first piece first. A run alone is a batch of one. */
export async function piecesOfBatch(logbook: Book, head: RunHead): Promise<readonly KeptRun[]> {
  const id = head.batch?.id ?? head.id;
  const heads = (await logbook.list())
    .filter((one) => one.id === id || one.batch?.id === id)
    .filter((one) => one.status === 'finished')
    .sort((a, b) => (a.batch?.piece ?? 1) - (b.batch?.piece ?? 1));
  const runs = await Promise.all(heads.map((one) => logbook.read(one.id)));
  return runs.filter((run) => run !== null);
}

/** What the pieces made before this one measured; nothing for the first, or a run alone. */
export async function earlierPieces(
  logbook: Book,
  head: RunHead,
): Promise<EarlierPieces | undefined> {
  const { batch } = head;
  if (!batch) return undefined;
  const pieces = await piecesOfBatch(logbook, head);
  return pieces
    .filter((run) => run.head.id !== head.id && (run.head.batch?.piece ?? 1) < batch.piece)
    .map((run) => run.readings);
}
