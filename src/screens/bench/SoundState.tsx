/** Whether it is listening, speaking or deaf: by picture, by word and by pattern, never by colour alone. */

import type { Notice } from '../../bench/index.ts';
import { dockTexts } from '../../texts/index.ts';
import { Icon, type IconName } from '../frame/Icon.tsx';
import { useSay } from '../use-say.ts';

const LOOKS: Readonly<Record<Notice['sound'], IconName>> = {
  listening: 'ear',
  speaking: 'mouth',
  deaf: 'no-ear',
};

export function SoundState({ notice }: { readonly notice: Notice }) {
  const say = useSay(dockTexts);
  return (
    <p class="sound" data-sound={notice.sound}>
      <Icon name={LOOKS[notice.sound]} />
      <span>{say(notice.sound)}</span>
      {notice.sound === 'listening' && notice.level !== null && <Level decibels={notice.level} />}
    </p>
  );
}

const BARS = [-50, -40, -30, -20] as const;

/** How loud it is at the microphone, in four bars. */
function Level({ decibels }: { readonly decibels: number }) {
  return (
    <span class="level" aria-hidden="true">
      {BARS.map((least) => (
        <span key={least} data-on={decibels >= least ? '' : undefined} />
      ))}
    </span>
  );
}
