/** Whether it is listening, speaking or deaf: by picture, by word and by pattern, never by colour alone. */

import type { Notice } from '../../bench/index.ts';
import { Icon, type IconName } from '../frame/Icon.tsx';

const LOOKS: Readonly<Record<Notice['sound'], { icon: IconName; word: string }>> = {
  listening: { icon: 'ear', word: 'Listening' },
  speaking: { icon: 'mouth', word: 'Speaking' },
  deaf: { icon: 'no-ear', word: 'Deaf' },
};

export function SoundState({ notice }: { readonly notice: Notice }) {
  const { icon, word } = LOOKS[notice.sound];
  return (
    <p class="sound" data-sound={notice.sound}>
      <Icon name={icon} />
      <span>{word}</span>
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
