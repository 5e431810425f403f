/** The screen of a run, readable at two metres. It draws what is and passes words on; it decides nothing. */

import { useEffect, useMemo } from 'preact/hooks';
import { commandSaid, readingFigures, releaseAwaited } from '../../flow/index.ts';
import { dockTexts, frameTexts } from '../../texts/index.ts';
import { Cautions } from '../frame/Cautions.tsx';
import { later } from '../frame/later.tsx';
import { addressOf } from '../route.ts';
import { useSay } from '../use-say.ts';
import type { LiveRun, WorldProps } from '../world.ts';
import { Answers } from './Answers.tsx';
import { Asks } from './Asks.tsx';
import { Asleep } from './Asleep.tsx';
import { BenchHead } from './BenchHead.tsx';
import { Dock } from './Dock.tsx';
import { Figures } from './Figures.tsx';
import { factKeys } from './fact-keys.ts';
import { HeldBand } from './HeldBand.tsx';
import { KeepBeside } from './KeepBeside.tsx';
import { Lead } from './Lead.tsx';
import { picturePlace } from './picture-place.ts';
import { ReleasePanel } from './ReleasePanel.tsx';
import { Said } from './Said.tsx';
import type { Say } from './SayButton.tsx';
import { type Scene, sceneOf } from './scene.ts';
import { situationOf } from './situation.ts';
import { useAskedFigure } from './use-asked-figure.ts';
import { useBenchKeys } from './use-bench-keys.ts';
import { useLiveRun } from './use-live-run.ts';
import { useNumber } from './use-number.ts';
import { useOneColumn } from './use-one-column.ts';
import { Why } from './Why.tsx';

const Machine = later(async () => (await import('./Pictures.tsx')).Machine);
const Piece = later(async () => (await import('./Pictures.tsx')).Piece);
const Done = later(async () => (await import('./Done.tsx')).Done);

interface BenchProps extends WorldProps {
  readonly run: LiveRun;
  readonly resumed: boolean;
}

export function Bench({ world, run, resumed }: BenchProps) {
  const bench = useBench(run);
  const { state, notice, said, scene, say } = bench;
  const over = scene.layout === 'done';
  return (
    <div class="bench" data-layout={scene.layout} data-sound={notice.sound}>
      <BenchHead state={state} scene={scene} notice={notice} />
      {scene.layout === 'held' && <HeldBand view={scene.view} />}
      <main class="bench-main">
        <div class="bench-now">
          <Now {...bench} />
          <Asleep run={run} resumed={resumed} />
        </div>
        {!over && (
          <div class="bench-say">
            <Answers {...bench} bounds={readingFigures(state.job, state.snapshot)} />
            {releaseAwaited(state.job, state.snapshot) !== undefined && (
              <ReleasePanel
                key={scene.view.step.id}
                operators={world.operators.all()}
                onRelease={run.release}
              />
            )}
            {scene.layout !== 'cutting' && <Asking {...bench} />}
          </div>
        )}
        <div class="bench-below">
          {scene.layout === 'cutting' ? <WhileCutting {...bench} /> : <Below {...bench} />}
          <KeepBeside world={world} run={run} state={state} />
        </div>
      </main>
      {over ? (
        <Ways runId={state.head.id} />
      ) : (
        <footer class="bench-foot">
          <Said said={said ?? state.lastLine} view={scene.view} />
          <Dock scene={scene} say={say} />
        </footer>
      )}
    </div>
  );
}

/** The run as it is now, and the ways to answer it. */
function useBench(run: LiveRun) {
  const { state, notice, said } = useLiveRun(run);
  const scene = useMemo(() => sceneOf(state), [state]);
  const keys = useMemo(() => factKeys(state.job.flow.kind.facts), [state.job]);
  const why = useAskedFigure(state, scene.view);
  const say: Say = (word, from) => {
    why.said(word);
    run.heard(commandSaid(state.job.flow.language, word), from);
  };
  const picture = picturePlace(scene, useOneColumn());
  const number = useNumber(scene, (text) => run.heard(text, 'key'));
  const situation = situationOf(scene, number.text, keys);
  useTitle(scene);
  useTop(scene);
  useBenchKeys(situation, (meaning) => {
    if (scene.layout === 'done') return;
    if (meaning.kind === 'say') say(meaning.word, 'key');
    if (meaning.kind === 'type') number.type(meaning.typed);
    if (meaning.kind === 'take') number.take();
  });
  const onGiveUp = () => run.giveUp();
  return { state, notice, said, scene, keys, say, number, situation, onGiveUp, why, picture };
}

type BenchNow = ReturnType<typeof useBench>;

/** The instruction, and what belongs right under it. */
function Now({ state, scene, why }: BenchNow) {
  const { layout, view } = scene;
  const text = useSay(dockTexts);
  if (layout === 'done') {
    return (
      <>
        <Lead
          view={
            state.head.status === 'given-up' ? { ...view, ...givenUpLines(text('givenUp')) } : view
          }
        />
        <Done state={state} />
      </>
    );
  }
  return (
    <>
      <Lead view={view} />
      {layout !== 'cutting' && layout !== 'held' && (
        <Figures view={view} asked={why.asked} onAsk={why.onAsk} />
      )}
      <Cautions lines={view.cautions} />
    </>
  );
}

function givenUpLines(text: string) {
  return { lead: { shown: text, spoken: text }, ask: { shown: '', spoken: '' } };
}

/** What may be asked, with the picture of what the hands move where it belongs beside it. */
function Asking(bench: BenchNow) {
  const { state, scene, say, picture } = bench;
  const machine = <Machine say={say} head={scene.heads.part} state={state} view={scene.view} />;
  return (
    <>
      {picture === 'before-asks' && machine}
      <Asks key={scene.view.step.id} {...bench} />
      {picture === 'behind-asks' && machine}
    </>
  );
}

/** While it cuts, figures have the whole width. */
function WhileCutting(bench: BenchNow) {
  return (
    <>
      <Figures view={bench.scene.view} asked={bench.why.asked} onAsk={bench.why.onAsk} />
      <div class="bench-beside">
        <Asking {...bench} />
      </div>
    </>
  );
}

function Below({ state, scene, say, picture }: BenchNow) {
  return (
    <>
      <Why view={scene.view} />
      <div class="pictures">
        {picture === 'below' && (
          <Machine say={say} head={scene.heads.part} state={state} view={scene.view} />
        )}
        <Piece state={state} />
      </div>
    </>
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
  const say = useSay(dockTexts);
  const frame = useSay(frameTexts);
  return (
    <nav class="dock ways" aria-label={say('fromHere')}>
      <a class="button say main" href={addressOf({ at: 'kept', run: runId })}>
        {say('seeLogbook')}
      </a>
      <a class="button say" href={addressOf({ at: 'shelf' })}>
        {frame('toShelf')}
      </a>
    </nav>
  );
}
