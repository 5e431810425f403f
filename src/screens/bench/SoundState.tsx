/** Whether it is listening, speaking or deaf: by picture, by word and by pattern, never by colour alone. */

import { type Notice, type RunState, turnOf } from '../../bench/index.ts';
import { dockTexts } from '../../texts/index.ts';
import { Icon, type IconName } from '../frame/Icon.tsx';
import { useSay } from '../use-say.ts';

const LOOKS: Readonly<Record<Notice['sound'], IconName>> = {
  listening: 'ear',
  speaking: 'mouth',
  deaf: 'no-ear',
};

const TURNS = {
  listening: 'listening',
  speaking: 'speaking',
  deaf: 'deaf',
  'reading-back': 'readingBack',
  'asking-again': 'askingAgain',
  held: 'heldTurn',
} as const;

interface SoundStateProps {
  readonly state: RunState;
  readonly notice: Notice;
}

/** The picture tells who may sound, the word whose turn it is. */
export function SoundState({ state, notice }: SoundStateProps) {
  const say = useSay(dockTexts);
  const turn = turnOf(state, notice.sound);
  return (
    <p class="sound" data-sound={notice.sound} data-turn={turn}>
      <Icon name={LOOKS[notice.sound]} />
      <span>{say(TURNS[turn])}</span>
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
