/** Runs that were broken off, offered before anything new. */

import { useCallback } from 'preact/hooks';
import type { RunHead } from '../../bench/index.ts';
import { frameTexts, type Language, sayIn } from '../../texts/index.ts';
import { Icon } from '../frame/Icon.tsx';
import { whenText } from '../logbook/when.ts';
import { addressOf } from '../route.ts';
import { useAwaited } from '../use-changes.ts';
import { useLanguage, useSay } from '../use-say.ts';
import type { AppWorld, WorldProps } from '../world.ts';

/** More than these stand in the Logbook only. */
const MOST_SHOWN = 3;

interface OpenRun {
  readonly head: RunHead;
  readonly place: string | null;
}

export function Unfinished({ world }: WorldProps) {
  const say = useSay(frameTexts);
  const language = useLanguage();
  const open = useAwaited(
    useCallback(() => openRuns(world, language), [world, language]),
    [world, language],
  );
  if (open.is !== 'here' || open.value.length === 0) return null;
  return (
    <section class="stack" aria-label={say('unfinished')}>
      {open.value.map((run) => (
        <GoOn key={run.head.id} {...run} />
      ))}
    </section>
  );
}

async function openRuns(world: AppWorld, language: Language): Promise<readonly OpenRun[]> {
  const heads = (await world.runs()).filter((head) => head.status === 'open').slice(0, MOST_SHOWN);
  if (heads.length === 0) return [];
  const { placeOfRun } = await import('./run-place.ts');
  const say = sayIn(language, frameTexts);
  const runs = await Promise.all(heads.map((head) => world.read(head.id)));
  return runs.flatMap((run) => {
    const at = run && placeOfRun(run);
    return run ? [{ head: run.head, place: at ? say('placeOf', at) : null }] : [];
  });
}

function GoOn({ head, place }: OpenRun) {
  const say = useSay(frameTexts);
  const language = useLanguage();
  return (
    <a class="go-on" href={addressOf({ at: 'run', run: head.id })}>
      <span class="go-on-text">
        <strong>{say('goOn', { title: head.flowTitle })}</strong>
        <span>
          {place ?? say('notFinished')} · {head.operator} · {whenText(head.startedAt, language)}
        </span>
      </span>
      <Icon name="next" />
    </a>
  );
}
