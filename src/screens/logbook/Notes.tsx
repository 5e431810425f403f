/** The notes of a run and the releases in it, with whether this device sealed them. */

import { useCallback } from 'preact/hooks';
import { type KeptRun, type RunEntry, releaseIn } from '../../bench/index.ts';
import type { Job } from '../../flow/index.ts';
import { type Language, recordTexts } from '../../texts/index.ts';
import { useAwaited } from '../use-changes.ts';
import { useLanguage, useSay } from '../use-say.ts';
import type { WorldProps } from '../world.ts';
import { clockText, whenText } from './when.ts';

interface NotesProps extends WorldProps {
  readonly run: KeptRun;
  readonly job: Job | null;
}

export function Notes({ run, job }: Omit<NotesProps, 'world'>) {
  const say = useSay(recordTexts);
  const language = useLanguage();
  const notes = run.entries.filter(({ event }) => event?.type === 'note');
  if (notes.length === 0) return null;
  return (
    <section class="stack" aria-labelledby="kept-notes">
      <h2 id="kept-notes">{say('notes')}</h2>
      <ul class="stack notes">
        {notes.map((entry) => (
          <li key={entry.seq} class="card">
            <p class="note-text">{String(entry.event?.text ?? '')}</p>
            <p class="hint">
              {clockText(entry.at, language)},{' '}
              {job?.flow.steps.get(entry.step)?.title ?? entry.step}
            </p>
          </li>
        ))}
      </ul>
    </section>
  );
}

export function Releases({ world, run, job }: NotesProps) {
  const say = useSay(recordTexts);
  const language = useLanguage();
  const genuine = useAwaited(
    useCallback(() => world.releasesGenuine(run), [world, run]),
    [world, run],
  );
  const released = run.entries.filter((entry) => releaseIn(entry) !== undefined);
  if (released.length === 0) return null;
  return (
    <section class="stack" aria-labelledby="kept-releases">
      <h2 id="kept-releases">{say('releases')}</h2>
      <ul class="stack">
        {released.map((entry) => (
          <li key={entry.seq}>{say('releasedAt', releasedWords(entry, job, language))}</li>
        ))}
      </ul>
      {genuine.is === 'here' && (
        <p class={genuine.value ? 'soft' : 'faults'}>
          {say(genuine.value ? 'sealed' : 'unsealed')}
        </p>
      )}
    </section>
  );
}

function releasedWords(entry: RunEntry, job: Job | null, language: Language) {
  return {
    step: job?.flow.steps.get(entry.step)?.title ?? entry.step,
    name: releaseIn(entry)?.byName ?? '',
    when: whenText(entry.at, language),
  };
}
