/** One run out of the Logbook: what was made, how it measured, by whom, and every word of it. */

import { useCallback, useMemo } from 'preact/hooks';
import { type KeptRun, startJob } from '../../bench/index.ts';
import { recordTexts } from '../../texts/index.ts';
import { Icon } from '../frame/Icon.tsx';
import { addressOf } from '../route.ts';
import { stateOfRun } from '../shelf/run-place.ts';
import { useAwaited } from '../use-changes.ts';
import { useSay } from '../use-say.ts';
import type { WorldProps } from '../world.ts';
import { nextPiece } from './BatchScreen.tsx';
import { batchOf, numberOf } from './batches.ts';
import { Entries } from './Entries.tsx';
import { Exports } from './Exports.tsx';
import { KeptPiece } from './KeptPiece.tsx';
import { Notes, Releases } from './Notes.tsx';
import { Numbers } from './Numbers.tsx';
import { Photos } from './Photos.tsx';
import { ReadingsList } from './ReadingsList.tsx';
import { Replay } from './Replay.tsx';
import { STATUSES } from './verdict-words.ts';
import { durationText, whenText } from './when.ts';

interface KeptRunProps extends WorldProps {
  readonly runId: string;
}

export function KeptRunScreen({ world, runId }: KeptRunProps) {
  const run = useAwaited(
    useCallback(() => world.read(runId), [world, runId]),
    [world, runId],
  );
  if (run.is === 'waiting') return <p>Opening the run.</p>;
  if (run.is === 'failed' || run.value === null) {
    return (
      <section class="stack">
        <h1>Not in this Logbook</h1>
        <p>
          {run.is === 'failed' ? run.why : 'The run was made on another device, or taken away.'}
        </p>
        <a href={addressOf({ at: 'logbook' })}>To the Logbook</a>
      </section>
    );
  }
  return <OneRun world={world} run={run.value} />;
}

function OneRun({ world, run }: WorldProps & { readonly run: KeptRun }) {
  const state = useMemo(() => stateOfRun(run), [run]);
  const { head, entries } = run;
  const readings = state?.readings ?? run.readings;
  return (
    <article class="kept">
      <header class="stack">
        <h1>{head.flowTitle}</h1>
        <Facts run={run} card={state?.job.card.title ?? head.cardId} />
        <Ways run={run} />
      </header>
      <section class="stack" aria-labelledby="kept-readings">
        <h2 id="kept-readings">Readings</h2>
        <ReadingsList readings={readings} job={state?.job ?? null} held={state?.snapshot} bars />
      </section>
      {state && <KeptPiece state={state} head={head} />}
      {state && <Numbers {...state} />}
      <Notes run={run} job={state?.job ?? null} />
      <Releases world={world} run={run} job={state?.job ?? null} />
      <Photos world={world} runId={head.id} />
      {state && entries.length > 0 && <ReplayOf run={run} />}
      <Exports world={world} run={run} state={state} />
      <section class="stack" aria-labelledby="kept-entries">
        <h2 id="kept-entries">Word by word</h2>
        <Entries entries={entries} job={state?.job ?? null} />
      </section>
    </article>
  );
}

/** Replayed from the job as it was begun: later numbers come in as they did then. */
function ReplayOf({ run }: { readonly run: KeptRun }) {
  const started = useMemo(() => startJob(run.source, run.head.inputs), [run]);
  return started.ok ? <Replay run={run} job={started.job} /> : null;
}

function Facts({ run, card }: { readonly run: KeptRun; readonly card: string }) {
  const { head } = run;
  const facts = [
    ['Made by', head.operator],
    ['Began', whenText(head.startedAt)],
    ...(head.endedAt === undefined
      ? []
      : [['Took', durationText(head.startedAt, head.endedAt)] as const]),
    ['Machine', card],
    ['Flow revision', String(head.flowVersion)],
    ['Ending', STATUSES[head.status]],
    ...(head.batch ? [['Piece', String(numberOf(head))] as const] : []),
  ] as const;
  return (
    <dl class="facts">
      {facts.map(([name, value]) => (
        <div key={name}>
          <dt>{name}</dt>
          <dd>{value}</dd>
        </div>
      ))}
    </dl>
  );
}

function Ways({ run: { head } }: { readonly run: KeptRun }) {
  const say = useSay(recordTexts);
  return (
    <p class="row no-print">
      {head.status === 'open' && (
        <a class="button main tall" href={addressOf({ at: 'run', run: head.id })}>
          Go on with it
          <Icon name="next" />
        </a>
      )}
      <a
        class={head.status === 'open' ? 'button tall' : 'button main tall'}
        href={addressOf({ at: 'begin', flow: head.flowId, like: head.id })}
      >
        Start again with the same numbers
      </a>
      <a class="button tall" href={nextPiece(head)}>
        {say('nextPiece')}
      </a>
      {head.batch && (
        <a class="button tall" href={addressOf({ at: 'batch', batch: batchOf(head) })}>
          {say('batchOpen')}
        </a>
      )}
      <button type="button" class="button tall" onClick={() => print()}>
        Print
      </button>
    </p>
  );
}
