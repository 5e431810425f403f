/** The sheet of one operator: which flows, at which pace, what was misheard and refused, how the sizes came out. */

import { useCallback } from 'preact/hooks';
import type { Pace, RunHead } from '../../bench/index.ts';
import { logbookTexts, peopleTexts, type Say } from '../../texts/index.ts';
import { isBy } from '../logbook/find-runs.ts';
import { fileName, giveFile } from '../logbook/give-file.ts';
import { whenText } from '../logbook/when.ts';
import { addressOf } from '../route.ts';
import { useAwaited } from '../use-changes.ts';
import { useLanguage, useSay } from '../use-say.ts';
import type { WorldProps } from '../world.ts';
import { type Competence, type Counts, competenceCsv, competenceOf } from './competence.ts';

interface OperatorSheetProps extends WorldProps {
  /** Id in the list, or the name that old runs have. */
  readonly operator: string;
}

export function OperatorSheet({ world, operator }: OperatorSheetProps) {
  const say = useSay(peopleTexts);
  const book = useSay(logbookTexts);
  const runs = useAwaited(
    useCallback(() => world.runs(), [world]),
    [world, operator],
  );
  if (runs.is === 'waiting') return <p>{book('opening')}</p>;
  if (runs.is === 'failed') return <p class="faults">{runs.why}</p>;
  const listed = world.operators.all().find(({ id }) => id === operator);
  const theirs = runs.value.filter(
    (head) => isBy(head, operator) || head.operator === listed?.name,
  );
  const name = listed?.name ?? theirs[0]?.operator;
  if (name === undefined) return <p>{say('notHere')}</p>;
  return <Sheet name={name} operator={operator} runs={theirs} />;
}

interface SheetProps {
  readonly name: string;
  readonly operator: string;
  readonly runs: readonly RunHead[];
}

function Sheet({ name, operator, runs }: SheetProps) {
  const say = useSay(peopleTexts);
  const competence = competenceOf(runs);
  const csv = () =>
    giveFile(fileName(['sheet', name], 'csv'), 'text/csv', competenceCsv(name, competence));
  return (
    <article class="kept">
      <header class="stack">
        <h1>{say('sheetOf', { name })}</h1>
        <p class="soft">{say('sheetAbout')}</p>
        <p class="row no-print">
          <button type="button" class="button main tall" onClick={() => print()}>
            {say('print')}
          </button>
          <button type="button" class="button tall" onClick={csv}>
            {say('csv')}
          </button>
          <a class="button tall" href={addressOf({ at: 'logbook', operator })}>
            {say('toLogbook', { name })}
          </a>
        </p>
      </header>
      {runs.length === 0 ? <p>{say('noRuns')}</p> : <Rows competence={competence} />}
    </article>
  );
}

function Rows({ competence: { rows, all } }: { readonly competence: Competence }) {
  const say = useSay(peopleTexts);
  return (
    <ul class="sheet-rows">
      {rows.map(({ flowId, flowTitle, pace, counts }) => (
        <li key={`${flowId} ${pace}`} class="card stack">
          <h2>
            {flowTitle}
            <span class="badge">{paceName(pace, say)}</span>
          </h2>
          <CountList counts={counts} />
        </li>
      ))}
      {rows.length > 1 && (
        <li class="card stack">
          <h2>{say('allFlows')}</h2>
          <CountList counts={all} />
        </li>
      )}
    </ul>
  );
}

function CountList({ counts }: { readonly counts: Counts }) {
  const say = useSay(peopleTexts);
  const language = useLanguage();
  const { runs, finished, givenUp, open, last, misheard, refused, within, judged } = counts;
  const rows: readonly (readonly [string, string])[] = [
    [say('runs'), String(runs)],
    [say('finished'), String(finished)],
    [say('givenUp'), String(givenUp)],
    [say('open'), String(open)],
    [say('misheard'), String(misheard)],
    [say('refused'), String(refused)],
    [say('inTolerance'), say('judged', { within, all: judged })],
    [say('lastRun'), whenText(last, language)],
    ...(counts.releases.length > 0 ? [[say('released'), counts.releases.join(', ')] as const] : []),
  ];
  return (
    <dl class="facts">
      {rows.map(([term, value]) => (
        <div key={term}>
          <dt>{term}</dt>
          <dd>{value}</dd>
        </div>
      ))}
    </dl>
  );
}

export function paceName(pace: Pace | null, say: Say<typeof peopleTexts>): string {
  switch (pace) {
    case 'first-time':
      return say('paceFirst');
    case 'familiar':
      return say('paceFamiliar');
    case 'own-pace':
      return say('paceOwn');
    default:
      return say('paceNone');
  }
}
