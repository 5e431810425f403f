/** Where a job begins: the flow is read, and a past run's numbers are fetched when they are asked for. */

import { useCallback } from 'preact/hooks';
import type { RunHead } from '../../bench/index.ts';
import { readCard, withOwnMaterials } from '../../flow/index.ts';
import { beginTexts, frameTexts } from '../../texts/index.ts';
import { addressOf } from '../route.ts';
import { readEntry } from '../shelf/read-entry.ts';
import { useAwaited } from '../use-changes.ts';
import { useOwnMaterials } from '../use-own-materials.ts';
import { useSay } from '../use-say.ts';
import type { ShelfEntry, WorldProps } from '../world.ts';
import { BeginForm } from './BeginForm.tsx';

interface BeginProps extends WorldProps {
  readonly flow: string;
  /** A past run whose numbers are proposed. */
  readonly like?: string;
  /** True for the next piece of that run's batch. */
  readonly batch?: boolean;
}

export function Begin({ world, flow, like, batch = false }: BeginProps) {
  const say = useSay(beginTexts);
  const past = useAwaited(
    useCallback(async () => (like === undefined ? null : await world.read(like)), [world, like]),
    [world, like],
  );
  const kept = useAwaited(
    useCallback(() => world.runs(), [world]),
    [world],
  );
  const entry = world.shelf.find((one) => one.id === flow);
  if (!entry) return <NoFlow />;
  if (past.is === 'waiting' || kept.is === 'waiting') return <p>{say('fetching')}</p>;
  const head = past.is === 'here' ? (past.value?.head ?? null) : null;
  const runs = kept.is === 'here' ? kept.value : [];
  return (
    <ReadBegin
      world={world}
      entry={entry}
      past={head}
      runs={runs}
      batchOf={batch ? head?.id : undefined}
    />
  );
}

interface ReadBeginProps extends WorldProps {
  readonly entry: ShelfEntry;
  readonly past: RunHead | null;
  /** Heads in the Logbook, newest first. */
  readonly runs: readonly RunHead[];
  readonly batchOf: string | undefined;
}

function ReadBegin({ world, entry, past, runs, batchOf }: ReadBeginProps) {
  const say = useSay(beginTexts);
  const materials = useOwnMaterials(world);
  const read = readEntry(entry, world.language);
  if (!read.ok) {
    return (
      <section class="faults" role="alert">
        <h1>{say('unreadable', { title: entry.title })}</h1>
        <ul>
          {read.faults.map((fault) => (
            <li key={fault}>{fault}</li>
          ))}
        </ul>
      </section>
    );
  }
  const cards = world.cards().flatMap((card) => {
    if (card.machineKind !== entry.machineKind) return [];
    const value = readCard(card.title, card.card);
    return value.ok ? [{ ...value.value, materials }] : [];
  });
  return (
    <BeginForm
      world={world}
      flow={withOwnMaterials(read.flow, { materials })}
      cards={cards}
      past={past}
      batchOf={batchOf}
      runs={runs}
      about={entry.about}
    />
  );
}

function NoFlow() {
  const say = useSay(beginTexts);
  const frame = useSay(frameTexts);
  return (
    <section class="stack">
      <h1>{say('noFlow')}</h1>
      <p>
        {say('noFlowWhy')} <a href={addressOf({ at: 'shelf' })}>{frame('toShelf')}</a>
      </p>
    </section>
  );
}
