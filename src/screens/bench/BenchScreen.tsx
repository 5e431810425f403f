/** Opens one run on the Bench, and leaves it when the screen is left. */

import { useEffect, useState } from 'preact/hooks';
import { frameTexts, type Language, sentenceOf } from '../../texts/index.ts';
import { InLanguage } from '../frame/InLanguage.tsx';
import { addressOf } from '../route.ts';
import { useLanguage, useSay } from '../use-say.ts';
import type { AppWorld, LiveRun, Opened, WorldProps } from '../world.ts';
import { Bench } from './Bench.tsx';

interface BenchScreenProps extends WorldProps {
  readonly runId: string;
}

export function BenchScreen({ world, runId }: BenchScreenProps) {
  const opened = useRun(world, runId, useLanguage());
  const say = useSay(frameTexts);
  if (!opened) return <p class="bench-wait">{say('opening')}</p>;
  if (!opened.ok) return <NotOpened fault={opened.fault} />;
  // What is seen of a run is in the language it is said in.
  const { language } = opened.run.current().state.job.flow;
  return (
    <InLanguage language={language}>
      <Bench world={world} run={opened.run} resumed={opened.resumed} />
    </InLanguage>
  );
}

/** A run that opens after the screen was left is closed again at once. */
function useRun(world: AppWorld, runId: string, language: Language): Opened | null {
  const [opened, setOpened] = useState<Opened | null>(null);
  useEffect(() => {
    let run: LiveRun | null = null;
    let left = false;
    const take = (result: Opened) => {
      if (result.ok) run = result.run;
      if (left) void run?.leave();
      else setOpened(result);
    };
    world
      .open(runId)
      .then(take, (error: unknown) => take({ ok: false, fault: sentenceOf(error, language) }));
    return () => {
      left = true;
      void run?.leave();
    };
  }, [world, runId]);
  return opened;
}

function NotOpened({ fault }: { readonly fault: string }) {
  const say = useSay(frameTexts);
  return (
    <main class="bench-wait stack">
      <h1>{say('cannotLead')}</h1>
      <p>{fault}</p>
      <p class="row">
        <button type="button" class="button tall" onClick={() => location.reload()}>
          {say('tryAgain')}
        </button>
        <a class="button tall" href={addressOf({ at: 'shelf' })}>
          {say('toShelf')}
        </a>
        <a class="button tall" href={addressOf({ at: 'logbook' })}>
          {say('toLogbook')}
        </a>
      </p>
    </main>
  );
}
