/** Past runs, the newest first; found by a few letters of what, who or when. */

import { useCallback, useState } from 'preact/hooks';
import type { RunHead } from '../../bench/index.ts';
import { addressOf } from '../route.ts';
import { useAwaited } from '../use-changes.ts';
import type { WorldProps } from '../world.ts';
import { KeepAll } from './KeepAll.tsx';
import { STATUSES } from './verdict-words.ts';
import { durationText, whenText } from './when.ts';

/** More rows are drawn only when they are asked for: a logbook grows for years. */
const ROWS_AT_ONCE = 50;

export function Logbook({ world }: WorldProps) {
  const [turn, setTurn] = useState(0);
  const runs = useAwaited(
    useCallback(() => world.runs(), [world]),
    [world, turn],
  );
  return (
    <>
      <section class="stack" aria-labelledby="logbook-title">
        <h1 id="logbook-title">Logbook</h1>
        {world.troubles().map((trouble) => (
          <p key={trouble} class="faults" role="alert">
            {trouble}
          </p>
        ))}
        {runs.is === 'waiting' && <p>Opening the Logbook.</p>}
        {runs.is === 'failed' && (
          <p class="faults" role="alert">
            The Logbook cannot be read: {runs.why}
          </p>
        )}
        {runs.is === 'here' && <Runs runs={runs.value} />}
      </section>
      <KeepAll world={world} onTaken={() => setTurn(turn + 1)} />
    </>
  );
}

function Runs({ runs }: { readonly runs: readonly RunHead[] }) {
  const [wanted, setWanted] = useState('');
  const [rows, setRows] = useState(ROWS_AT_ONCE);
  if (runs.length === 0) return <p class="soft">Nothing has been made on this device yet.</p>;
  const found = runs.filter((run) => matches(run, wanted));
  return (
    <>
      <div class="field logbook-search">
        <label for="logbook-wanted">Find</label>
        <input
          id="logbook-wanted"
          type="search"
          autocomplete="off"
          placeholder="Flow, name, date or ending"
          value={wanted}
          onInput={(event) => setWanted(event.currentTarget.value)}
        />
      </div>
      <p class="hint" role="status">
        {found.length === 1 ? '1 run' : `${found.length} runs`}
      </p>
      <ul class="runs">
        {found.slice(0, rows).map((run) => (
          <RunRow key={run.id} run={run} />
        ))}
      </ul>
      {found.length > rows && (
        <button type="button" class="button" onClick={() => setRows(rows + ROWS_AT_ONCE)}>
          Show {Math.min(ROWS_AT_ONCE, found.length - rows)} more
        </button>
      )}
    </>
  );
}

function RunRow({ run }: { readonly run: RunHead }) {
  const { id, flowTitle, operator, startedAt, endedAt, status } = run;
  return (
    <li>
      <a class="run-row" href={addressOf({ at: 'kept', run: id })}>
        <strong>{flowTitle}</strong>
        <span>{operator}</span>
        <span class="figures-text">
          {whenText(startedAt)}
          {endedAt !== undefined && `, ${durationText(startedAt, endedAt)}`}
        </span>
        <span class="run-status" data-status={status}>
          {STATUSES[status]}
        </span>
      </a>
    </li>
  );
}

/** Every word that is looked for must stand somewhere in the row. */
function matches(run: RunHead, wanted: string): boolean {
  const row = [run.flowTitle, run.operator, whenText(run.startedAt), STATUSES[run.status]]
    .join(' ')
    .toLowerCase();
  return wanted
    .toLowerCase()
    .split(/\s+/)
    .every((word) => row.includes(word));
}
