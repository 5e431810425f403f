/** Every word of a run: what was heard, from where, what it did, what was said back. */

import type { RunEntry } from '../../bench/index.ts';
import type { Job } from '../../flow/index.ts';
import { logbookTexts, recordTexts } from '../../texts/index.ts';
import { useLanguage, useSay } from '../use-say.ts';
import { FROM, OUTCOMES } from './verdict-words.ts';
import { clockText } from './when.ts';

interface EntriesProps {
  readonly entries: readonly RunEntry[];
  readonly job: Job | null;
}

export function Entries({ entries, job }: EntriesProps) {
  const say = useSay(logbookTexts);
  if (entries.length === 0) return <p class="soft">{say('nothingSaid')}</p>;
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
  const say = useSay(logbookTexts);
  const record = useSay(recordTexts);
  const language = useLanguage();
  const { at, heard, understood, outcome, said } = entry;
  const from = say(FROM[heard.from]);
  const percent = howSure(heard);
  const sure = percent < 100 ? say('fromSure', { from, percent }) : from;
  const taken =
    understood === undefined || understood === heard.text
      ? []
      : [record('takenFor', { phrase: understood })];
  return (
    <li class="entry" data-outcome={outcome}>
      {title !== null && <h3 class="entry-step">{title}</h3>}
      <time class="entry-time" dateTime={new Date(at).toISOString()}>
        {clockText(at, language)}
      </time>
      <p class="entry-heard">
        {say('quoted', { word: heard.text })}{' '}
        <span class="hint">{[sure, ...taken].join(', ')}</span>
      </p>
      <p class="entry-outcome">{say(OUTCOMES[outcome])}</p>
      {said !== undefined && said !== '' && <p class="entry-said">{said}</p>}
    </li>
  );
}

/** In hundredths. */
export function howSure({ confidence }: Pick<RunEntry['heard'], 'confidence'>): number {
  return Math.round(confidence * 100);
}

function titleOf(step: string, job: Job | null): string {
  return job?.flow.steps.get(step)?.title ?? step;
}
