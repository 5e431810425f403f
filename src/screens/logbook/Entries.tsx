/** Every word of a run: what was heard, from where, what it did, what was said back. */

import type { RunEntry } from '../../bench/index.ts';
import type { Job } from '../../flow/index.ts';
import { clockText } from './when.ts';

interface EntriesProps {
  readonly entries: readonly RunEntry[];
  readonly job: Job | null;
}

export const FROM: Readonly<Record<RunEntry['heard']['from'], string>> = {
  speech: 'spoken',
  key: 'key',
  touch: 'touch',
  gauge: 'gauge',
  script: 'page',
};

export const OUTCOMES: Readonly<Record<RunEntry['outcome'], string>> = {
  moved: 'taken',
  refused: 'refused',
  asked: 'answered',
  unclear: 'not understood',
  note: 'noted',
};

export function Entries({ entries, job }: EntriesProps) {
  if (entries.length === 0) return <p class="soft">Nothing was said.</p>;
  return (
    <ol class="entries">
      {entries.map((entry, index) => (
        <Entry
          key={entry.seq}
          entry={entry}
          title={entries[index - 1]?.step === entry.step ? null : titleOf(entry.step, job)}
        />
      ))}
    </ol>
  );
}

function Entry({ entry, title }: { readonly entry: RunEntry; readonly title: string | null }) {
  const { at, heard, outcome, said } = entry;
  return (
    <li class="entry" data-outcome={outcome}>
      {title !== null && <h3 class="entry-step">{title}</h3>}
      <time class="entry-time" dateTime={new Date(at).toISOString()}>
        {clockText(at)}
      </time>
      <p class="entry-heard">
        “{heard.text}” <span class="hint">{howHeard(heard)}</span>
      </p>
      <p class="entry-outcome">{OUTCOMES[outcome]}</p>
      {said !== undefined && said !== '' && <p class="entry-said">{said}</p>}
    </li>
  );
}

function howHeard({ from, confidence }: RunEntry['heard']): string {
  const sure = confidence < 1 ? `, ${howSure({ confidence })} % sure` : '';
  return FROM[from] + sure;
}

/** In hundredths. */
export function howSure({ confidence }: Pick<RunEntry['heard'], 'confidence'>): number {
  return Math.round(confidence * 100);
}

function titleOf(step: string, job: Job | null): string {
  return job?.flow.steps.get(step)?.title ?? step;
}
