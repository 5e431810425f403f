/** The screen of a run, readable at two metres. It draws what is and passes words on; it decides nothing. */

import { useEffect, useMemo } from 'preact/hooks';
import { Cautions } from '../frame/Cautions.tsx';
import { later } from '../frame/later.tsx';
import { addressOf } from '../route.ts';
import type { LiveRun } from '../world.ts';
import { Answers } from './Answers.tsx';
import { Asks } from './Asks.tsx';
import { Asleep } from './Asleep.tsx';
import { BenchHead } from './BenchHead.tsx';
import { Dock } from './Dock.tsx';
import { Figures } from './Figures.tsx';
import { factKeys } from './fact-keys.ts';
import { HeldBand } from './HeldBand.tsx';
import { Lead } from './Lead.tsx';
import { Said } from './Said.tsx';
import type { Say } from './SayButton.tsx';
import { type Scene, sceneOf } from './scene.ts';
import { situationOf } from './situation.ts';
import { useBenchKeys } from './use-bench-keys.ts';
import { useLiveRun } from './use-live-run.ts';
import { useNumber } from './use-number.ts';
import { Why } from './Why.tsx';

const Machine = later(async () => (await import('./Pictures.tsx')).Machine);
const Piece = later(async () => (await import('./Pictures.tsx')).Piece);
const Done = later(async () => (await import('./Done.tsx')).Done);

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
  useTop(scene);
  useBenchKeys(situation, (meaning) => {
    if (over) return;
    if (meaning.kind === 'say') say(meaning.word, 'key');
    if (meaning.kind === 'type') number.type(meaning.typed);
    if (meaning.kind === 'take') number.take();
  });
  const { layout } = scene;
  const doing = layout === 'doing';
  const figures = <Figures key={scene.view.step.id} view={scene.view} />;
  const asks = (
    <Asks key={scene.view.step.id} scene={scene} say={say} onGiveUp={() => run.giveUp()} />
  );
  return (
    <div class="bench" data-layout={scene.layout} data-sound={notice.sound}>
      <BenchHead state={state} scene={scene} notice={notice} />
      {scene.layout === 'held' && <HeldBand view={scene.view} />}
      <main class="bench-main">
        <div class="bench-now">
          <Lead view={scene.view} />
          <Asleep run={run} resumed={resumed} />
          {over && <Done state={state} />}
          {(doing || layout === 'gate' || layout === 'measuring') && figures}
          {!over && <Cautions lines={scene.view.cautions} />}
        </div>
        {!over && (
          <div class="bench-say">
            <Answers scene={scene} keys={keys} say={say} number={number} situation={situation} />
            {doing && <Machine state={state} view={scene.view} />}
            {layout !== 'cutting' && asks}
          </div>
        )}
        <div class="bench-below">
          {layout === 'cutting' ? figures : <Why view={scene.view} />}
          {layout === 'cutting' && asks}
          {layout !== 'cutting' && (
            <div class="pictures">
              {!doing && !over && <Machine state={state} view={scene.view} />}
              <Piece state={state} />
            </div>
          )}
        </div>
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

function useTitle({ view }: Scene): void {
  const { title } = view.step;
  useEffect(() => {
    document.title = `${title} · Followrest`;
  }, [title]);
}

/** A new scene is read from its top; while it lasts nothing moves under the finger. */
function useTop({ view, waiting }: Scene): void {
  const scene = `${view.step.id} ${view.phase} ${waiting !== null}`;
  useEffect(() => window.scrollTo(0, 0), [scene]);
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
