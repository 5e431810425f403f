/** Past runs, the newest first; found by who, what, when and with which numbers. */

import { useCallback, useEffect, useMemo, useState } from 'preact/hooks';
import type { RunHead } from '../../bench/index.ts';
import { frameTexts, logbookTexts, recordTexts } from '../../texts/index.ts';
import { addressOf } from '../route.ts';
import { useAwaited } from '../use-changes.ts';
import { useLanguage, useSay } from '../use-say.ts';
import type { WorldProps } from '../world.ts';
import { batchOf, batchSizes, numberOf } from './batches.ts';
import { Filters } from './Filters.tsx';
import { ALL_RUNS, findRuns, isForAll, shelve, type Wanted } from './find-runs.ts';
import { KeepAll } from './KeepAll.tsx';
import { STATUSES } from './verdict-words.ts';
import { durationText, whenText } from './when.ts';

/** More rows are drawn only when they are asked for: a logbook grows for years. */
const ROWS_AT_ONCE = 50;

interface LogbookProps extends WorldProps {
  /** An operator whose runs are shown first of all. */
  readonly operator?: string;
}

export function Logbook({ world, operator }: LogbookProps) {
  const say = useSay(logbookTexts);
  const frame = useSay(frameTexts);
  const [turn, setTurn] = useState(0);
  const read = useAwaited<Read>(
    useCallback(
      async (early) => {
        const runs = await world.runs((newest) => early({ runs: newest, whole: false }));
        return { runs, whole: true };
      },
      [world],
    ),
    [world, turn],
  );
  // The first form of a date is slow to make, and nothing else is to be done while the runs are read.
  const language = useLanguage();
  useEffect(() => void whenText(0, language), [language]);
  return (
    <>
      <section class="stack" aria-labelledby="logbook-title">
        <h1 id="logbook-title">{frame('logbook')}</h1>
        {world.troubles().map((trouble) => (
          <p key={trouble} class="faults" role="alert">
            {trouble}
          </p>
        ))}
        {read.is === 'waiting' && <p>{say('opening')}</p>}
        {read.is === 'failed' && (
          <p class="faults" role="alert">
            {say('unreadable', { why: read.why })}
          </p>
        )}
        {read.is === 'here' && <Runs world={world} {...read.value} operator={operator} />}
      </section>
      <KeepAll world={world} onTaken={() => setTurn(turn + 1)} />
    </>
  );
}

/** What is read of the Logbook. */
interface Read {
  readonly runs: readonly RunHead[];
  /** False while only the newest are read: nothing is said of how many there are. */
  readonly whole: boolean;
}

interface RunsProps extends WorldProps, Read {
  readonly operator: string | undefined;
}

export function Runs({ world, runs, whole, operator = '' }: RunsProps) {
  const say = useSay(recordTexts);
  const book = useSay(logbookTexts);
  const language = useLanguage();
  const [wanted, setWanted] = useState<Wanted>({ ...ALL_RUNS, operator });
  const [rows, setRows] = useState(ROWS_AT_ONCE);
  const sizes = useMemo(() => batchSizes(runs), [runs]);
  const found = useMemo(
    () => (isForAll(wanted) ? runs : findRuns(shelve(runs, language), wanted)),
    [runs, language, wanted],
  );
  // Made ready behind the first rows, so that neither they nor the first letter typed have to wait for it.
  useEffect(() => {
    if (!whole) return;
    const later = setTimeout(() => shelve(runs, language));
    return () => clearTimeout(later);
  }, [whole, runs, language]);
  if (runs.length === 0) return <p class="soft">{book('nothingYet')}</p>;
  return (
    <>
      <Filters
        wanted={wanted}
        runs={runs}
        operators={world.operators.all()}
        onWanted={(changed) => {
          setWanted(changed);
          setRows(ROWS_AT_ONCE);
        }}
      />
      <p class="hint" role="status">
        {say(whole ? 'found' : 'foundSoFar', { n: found.length })}
      </p>
      <ul class="runs">
        {found.slice(0, rows).map((run) => (
          <RunRow key={run.id} run={run} ofBatch={sizes.has(batchOf(run))} />
        ))}
      </ul>
      {found.length > rows && (
        <button type="button" class="button tall" onClick={() => setRows(rows + ROWS_AT_ONCE)}>
          {say('more', { n: Math.min(ROWS_AT_ONCE, found.length - rows) })}
        </button>
      )}
    </>
  );
}

interface RunRowProps {
  readonly run: RunHead;
  readonly ofBatch: boolean;
}

export function RunRow({ run, ofBatch }: RunRowProps) {
  const say = useSay(recordTexts);
  const book = useSay(logbookTexts);
  const language = useLanguage();
  const { id, flowTitle, operator, startedAt, endedAt, status } = run;
  return (
    <li>
      <a class="run-row" href={addressOf({ at: 'kept', run: id })}>
        <strong>{flowTitle}</strong>
        <span>
          {operator}
          {ofBatch && `, ${say('pieceOf', { piece: numberOf(run) })}`}
        </span>
        <span class="figures-text">
          {whenText(startedAt, language)}
          {endedAt !== undefined && `, ${durationText(startedAt, endedAt, book)}`}
        </span>
        <span class="run-status" data-status={status}>
          {book(STATUSES[status])}
        </span>
      </a>
    </li>
  );
}
