/** What is looked for in the Logbook: words, operator, flow, days, the piece. */

import { useMemo } from 'preact/hooks';
import type { RunHead } from '../../bench/index.ts';
import { recordTexts } from '../../texts/index.ts';
import { useSay } from '../use-say.ts';
import type { Operator } from '../world.ts';
import { ALL_RUNS, isForAll, type Wanted } from './find-runs.ts';

interface FiltersProps {
  readonly wanted: Wanted;
  readonly runs: readonly RunHead[];
  readonly operators: readonly Operator[];
  readonly onWanted: (wanted: Wanted) => void;
}

export function Filters({ wanted, runs, operators, onWanted }: FiltersProps) {
  const say = useSay(recordTexts);
  const flows = useMemo(() => flowsOf(runs), [runs]);
  const people = useMemo(() => peopleOf(runs, operators), [runs, operators]);
  const open = isForAll(wanted);
  const field = (name: keyof Wanted) => ({
    id: `wanted-${name}`,
    value: wanted[name],
    onInput: (event: { readonly currentTarget: { readonly value: string } }) =>
      onWanted({ ...wanted, [name]: event.currentTarget.value }),
  });
  return (
    <search class="filters">
      <div class="field filter-words">
        <label for="wanted-text">{say('find')}</label>
        <input {...field('text')} type="search" autocomplete="off" placeholder={say('findHint')} />
      </div>
      <Pick name={say('operator')} all={say('all')} options={people} {...field('operator')} />
      <Pick name={say('flow')} all={say('all')} options={flows} {...field('flow')} />
      <div class="field">
        <label for="wanted-from">{say('from')}</label>
        <input {...field('from')} type="date" />
      </div>
      <div class="field">
        <label for="wanted-until">{say('until')}</label>
        <input {...field('until')} type="date" />
      </div>
      <div class="field">
        <label for="wanted-piece">{say('piece')}</label>
        <input {...field('piece')} autocomplete="off" placeholder={say('pieceHint')} />
      </div>
      {!open && (
        <button type="button" class="button tall" onClick={() => onWanted(ALL_RUNS)}>
          {say('clear')}
        </button>
      )}
    </search>
  );
}

interface PickProps {
  readonly id: string;
  readonly name: string;
  readonly all: string;
  readonly options: ReadonlyMap<string, string>;
  readonly value: string;
  readonly onInput: (event: { readonly currentTarget: { readonly value: string } }) => void;
}

function Pick({ id, name, all, options, value, onInput }: PickProps) {
  return (
    <div class="field">
      <label for={id}>{name}</label>
      <select id={id} value={value} onChange={onInput}>
        <option value="">{all}</option>
        {[...options].map(([key, text]) => (
          <option key={key} value={key}>
            {text}
          </option>
        ))}
      </select>
    </div>
  );
}

function flowsOf(runs: readonly RunHead[]): ReadonlyMap<string, string> {
  return new Map(runs.map(({ flowId, flowTitle }) => [flowId, flowTitle]));
}

/** Those of the list under the name they have now, and names that only old runs have. */
function peopleOf(
  runs: readonly RunHead[],
  operators: readonly Operator[],
): ReadonlyMap<string, string> {
  const known = new Map(operators.map(({ id, name }) => [id, name]));
  for (const { operatorId, operator } of runs) {
    const key = operatorId ?? operator;
    if (!known.has(key)) known.set(key, operator);
  }
  return known;
}
