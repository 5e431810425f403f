/** The screen of a run, readable at two metres. It draws what is and passes words on; it decides nothing. */

import { useEffect, useMemo } from 'preact/hooks';
import { addressOf } from '../route.ts';
import type { LiveRun } from '../world.ts';
import { Answers } from './Answers.tsx';
import { Asks } from './Asks.tsx';
import { BenchHead } from './BenchHead.tsx';
import { Dock } from './Dock.tsx';
import { Done } from './Done.tsx';
import { Figures } from './Figures.tsx';
import { factKeys } from './fact-keys.ts';
import { HeldBand } from './HeldBand.tsx';
import { Lead } from './Lead.tsx';
import { Notices } from './Notices.tsx';
import { Pictures } from './Pictures.tsx';
import { Said } from './Said.tsx';
import type { Say } from './SayButton.tsx';
import { StepCautions } from './StepCautions.tsx';
import { type Scene, sceneOf, wordOf } from './scene.ts';
import { useBenchKeys } from './use-bench-keys.ts';
import { useLiveRun } from './use-live-run.ts';
import { useNumber } from './use-number.ts';

interface BenchProps {
  readonly run: LiveRun;
  readonly resumed: boolean;
}

export function Bench({ run, resumed }: BenchProps) {
  const { state, notice, said } = useLiveRun(run);
  const scene = useMemo(() => sceneOf(state), [state]);
  const keys = useMemo(() => factKeys(state.job.flow.kind.facts), [state.job]);
  const say: Say = (word, from) => run.heard(word, from);
  const number = useNumber(scene, (text) => run.heard(text, 'key'));
  const situation = situationOf(scene, number.text, keys);
  const over = scene.layout === 'done';
  useTitle(scene);
  useBenchKeys(situation, (meaning) => {
    if (over) return;
    if (meaning.kind === 'say') say(meaning.word, 'key');
    if (meaning.kind === 'type') number.type(meaning.typed);
    if (meaning.kind === 'take') number.take();
  });
  return (
    <div class="bench" data-layout={scene.layout} data-sound={notice.sound}>
      <BenchHead state={state} scene={scene} notice={notice} />
      {scene.layout === 'held' && <HeldBand view={scene.view} />}
      <main class="bench-main">
        <div class="bench-now">
          <Lead view={scene.view} />
          <Notices notice={notice} run={run} resumed={resumed} />
          {over ? (
            <Done state={state} />
          ) : (
            <>
              <Figures key={scene.view.step.id} view={scene.view} />
              <StepCautions view={scene.view} />
            </>
          )}
        </div>
        {!over && (
          <div class="bench-say">
            <Answers scene={scene} keys={keys} say={say} number={number} situation={situation} />
            <Asks key={scene.view.step.id} scene={scene} say={say} onGiveUp={() => run.giveUp()} />
          </div>
        )}
        <Pictures state={state} view={scene.view} />
      </main>
      {over ? <Ways runId={state.head.id} /> : null}
      {!over && (
        <footer class="bench-foot">
          <Said said={said ?? state.lastLine} view={scene.view} />
          <Dock scene={scene} say={say} />
        </footer>
      )}
    </div>
  );
}

function situationOf(scene: Scene, typed: string, keys: ReadonlyMap<string, string>) {
  const facts = new Map<string, string>();
  for (const { fact, met, ask } of scene.gate) {
    const key = keys.get(fact);
    if (!met && ask && key !== undefined) facts.set(key, ask.word);
  }
  return {
    held: scene.layout === 'held',
    numberUnit: scene.list.number?.unit ?? null,
    waiting: scene.waiting !== null,
    typed,
    choices: scene.choices.map(wordOf),
    facts,
  };
}

function useTitle({ view }: Scene): void {
  const { title } = view.step;
  useEffect(() => {
    document.title = `${title} · Followrest`;
  }, [title]);
}

function Ways({ runId }: { readonly runId: string }) {
  return (
    <nav class="dock ways" aria-label="From here">
      <a class="button say main" href={addressOf({ at: 'kept', run: runId })}>
        See it in the Logbook
      </a>
      <a class="button say" href={addressOf({ at: 'shelf' })}>
        To the Shelf
      </a>
    </nav>
  );
}
