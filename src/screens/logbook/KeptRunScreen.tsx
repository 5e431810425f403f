/** One run out of the Logbook: what was made, how it measured, by whom, and every word of it. */

import { useCallback, useMemo } from 'preact/hooks';
import { type KeptRun, startJob } from '../../bench/index.ts';
import { frameTexts, logbookTexts, recordTexts } from '../../texts/index.ts';
import { Icon } from '../frame/Icon.tsx';
import { InLanguage } from '../frame/InLanguage.tsx';
import { addressOf } from '../route.ts';
import { stateOfRun } from '../shelf/run-place.ts';
import { useAwaited } from '../use-changes.ts';
import { useLanguage, useSay } from '../use-say.ts';
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
  const say = useSay(logbookTexts);
  const frame = useSay(frameTexts);
  const opened = useAwaited(
    useCallback(async () => {
      const run = await world.read(runId);
      return run && { run, language: await world.languageNamed(run.head.language) };
    }, [world, runId]),
    [world, runId],
  );
  if (opened.is === 'waiting') return <p>{say('openingRun')}</p>;
  if (opened.is === 'failed' || opened.value === null) {
    return (
      <section class="stack">
        <h1>{say('notHere')}</h1>
        <p>{opened.is === 'failed' ? opened.why : say('notHereWhy')}</p>
        <a href={addressOf({ at: 'logbook' })}>{frame('toLogbook')}</a>
      </section>
    );
  }
  // A run keeps the language it was made in, on the Bench and here.
  return (
    <InLanguage language={opened.value.language}>
      <OneRun world={world} run={opened.value.run} />
    </InLanguage>
  );
}

function OneRun({ world, run }: WorldProps & { readonly run: KeptRun }) {
  const say = useSay(logbookTexts);
  const language = useLanguage();
  const state = useMemo(() => stateOfRun(run, language), [run, language]);
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
        <h2 id="kept-readings">{say('readings')}</h2>
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
        <h2 id="kept-entries">{say('words')}</h2>
        <Entries entries={entries} job={state?.job ?? null} />
      </section>
    </article>
  );
}

/** Replayed from the job as it was begun: later numbers come in as they did then. */
function ReplayOf({ run }: { readonly run: KeptRun }) {
  const language = useLanguage();
  const started = useMemo(() => startJob(run.source, run.head.inputs, language), [run, language]);
  return started.ok ? <Replay run={run} job={started.job} /> : null;
}

function Facts({ run, card }: { readonly run: KeptRun; readonly card: string }) {
  const say = useSay(logbookTexts);
  const language = useLanguage();
  const { head } = run;
  const facts = [
    [say('madeBy'), head.operator],
    [say('began'), whenText(head.startedAt, language)],
    ...(head.endedAt === undefined
      ? []
      : [[say('took'), durationText(head.startedAt, head.endedAt, say)] as const]),
    [say('machine'), card],
    [say('revision'), String(head.flowVersion)],
    [say('ending'), say(STATUSES[head.status])],
    ...(head.batch ? [[say('piece'), String(numberOf(head))] as const] : []),
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
  const book = useSay(logbookTexts);
  return (
    <p class="row no-print">
      {head.status === 'open' && (
        <a class="button main tall" href={addressOf({ at: 'run', run: head.id })}>
          {book('goOn')}
          <Icon name="next" />
        </a>
      )}
      <a
        class={head.status === 'open' ? 'button tall' : 'button main tall'}
        href={addressOf({ at: 'begin', flow: head.flowId, like: head.id })}
      >
        {book('sameNumbers')}
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
        {book('print')}
      </button>
    </p>
  );
}
