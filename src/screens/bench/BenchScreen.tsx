/** Opens one run on the Bench, and leaves it when the screen is left. */

import { useEffect, useState } from 'preact/hooks';
import { addressOf } from '../route.ts';
import { sentenceOf } from '../use-changes.ts';
import type { AppWorld, LiveRun, Opened, WorldProps } from '../world.ts';
import { Bench } from './Bench.tsx';

interface BenchScreenProps extends WorldProps {
  readonly runId: string;
}

export function BenchScreen({ world, runId }: BenchScreenProps) {
  const opened = useRun(world, runId);
  if (!opened) return <p class="bench-wait">Opening the run.</p>;
  if (!opened.ok) return <NotOpened fault={opened.fault} />;
  return <Bench world={world} run={opened.run} resumed={opened.resumed} />;
}

/** A run that opens after the screen was left is closed again at once. */
function useRun(world: AppWorld, runId: string): Opened | null {
  const [opened, setOpened] = useState<Opened | null>(null);
  useEffect(() => {
    let run: LiveRun | null = null;
    let left = false;
    const take = (result: Opened) => {
      if (result.ok) run = result.run;
      if (left) void run?.leave();
      else setOpened(result);
    };
    world.open(runId).then(take, (error: unknown) => take({ ok: false, fault: sentenceOf(error) }));
    return () => {
      left = true;
      void run?.leave();
    };
  }, [world, runId]);
  return opened;
}

function NotOpened({ fault }: { readonly fault: string }) {
  return (
    <main class="bench-wait stack">
      <h1>This run cannot be led here</h1>
      <p>{fault}</p>
      <p class="row">
        <button type="button" class="button tall" onClick={() => location.reload()}>
          Try again
        </button>
        <a class="button tall" href={addressOf({ at: 'shelf' })}>
          To the Shelf
        </a>
        <a class="button tall" href={addressOf({ at: 'logbook' })}>
          To the Logbook
        </a>
      </p>
    </main>
  );
}
