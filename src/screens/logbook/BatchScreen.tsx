/** The pieces of one batch, one after another, and the way to the next. */

import { useCallback } from 'preact/hooks';
import { frameTexts, logbookTexts, recordTexts } from '../../texts/index.ts';
import { BatchCharts } from '../batch/BatchCharts.tsx';
import { addressOf } from '../route.ts';
import { useAwaited } from '../use-changes.ts';
import { useSay } from '../use-say.ts';
import type { WorldProps } from '../world.ts';
import { piecesOf } from './batches.ts';
import { RunRow } from './Logbook.tsx';

interface BatchProps extends WorldProps {
  readonly batch: string;
}

export function BatchScreen({ world, batch }: BatchProps) {
  const say = useSay(recordTexts);
  const book = useSay(logbookTexts);
  const frame = useSay(frameTexts);
  const runs = useAwaited(
    useCallback(() => world.runs(), [world]),
    [world, batch],
  );
  if (runs.is === 'waiting') return <p>{book('opening')}</p>;
  const pieces = runs.is === 'here' ? piecesOf(runs.value, batch) : [];
  const last = pieces.at(-1);
  if (!last) {
    return (
      <section class="stack">
        <h1>{say('batch')}</h1>
        <p>{runs.is === 'failed' ? runs.why : say('batchNone')}</p>
        <a href={addressOf({ at: 'logbook' })}>{frame('toLogbook')}</a>
      </section>
    );
  }
  return (
    <article class="kept">
      <header class="stack">
        <h1>{say('batchTitle', { flow: last.flowTitle })}</h1>
        <p class="soft">{say('batchPieces', { n: pieces.length })}</p>
        <p class="row no-print">
          <a class="button main tall" href={nextPiece(last)}>
            {say('nextPiece')}
          </a>
          <button type="button" class="button tall" onClick={() => print()}>
            {book('print')}
          </button>
        </p>
      </header>
      <ul class="runs">
        {pieces.map((run) => (
          <RunRow key={run.id} run={run} ofBatch />
        ))}
      </ul>
      <BatchCharts world={world} batch={batch} />
    </article>
  );
}

/** The form of a new run, with this one's numbers, as the next piece of its batch. */
export function nextPiece({
  id,
  flowId,
}: {
  readonly id: string;
  readonly flowId: string;
}): string {
  return addressOf({ at: 'begin', flow: flowId, like: id, batch: true });
}
