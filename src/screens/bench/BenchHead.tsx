/** Where one is in the flow, and who may sound. */

import type { Notice, RunState } from '../../bench/index.ts';
import { dockTexts, voiceTexts } from '../../texts/index.ts';
import { Icon } from '../frame/Icon.tsx';
import { addressOf } from '../route.ts';
import { LEAVES } from '../sound-leaves.ts';
import { useSay } from '../use-say.ts';
import { SoundState } from './SoundState.tsx';
import type { Scene } from './scene.ts';

interface BenchHeadProps {
  readonly state: RunState;
  readonly scene: Scene;
  readonly notice: Notice;
}

export function BenchHead({ state, scene, notice }: BenchHeadProps) {
  const say = useSay(dockTexts);
  const { index, of, title } = scene.view.step;
  const over = scene.layout === 'done';
  return (
    <header class="bench-head">
      <a class="button bench-leave" href={addressOf({ at: 'shelf' })} aria-label={say('leave')}>
        <Icon name="back" />
      </a>
      <div class="bench-where">
        <p class="bench-flow">{state.job.flow.file.title}</p>
        <p class="bench-step">
          {over ? (
            <strong>{say('over')}</strong>
          ) : (
            <>
              <strong class="bench-count">{say('step', { index: index + 1, of })}</strong>{' '}
              <span class="bench-title">{title}</span>
            </>
          )}
        </p>
      </div>
      <SoundState state={state} notice={notice} />
      <progress
        class="bench-progress"
        max={of}
        value={over ? of : index + 1}
        aria-label={say('place')}
      />
      <Trouble notice={notice} />
    </header>
  );
}

/** What is wrong with ear, mouth or storage, and always where the sound goes: nowhere, without an ear. */
export function Trouble({ notice }: { readonly notice: Notice }) {
  const say = useSay(voiceTexts);
  const { trouble, advice, soundLeaves = 'no', unpronounced = [] } = notice;
  const words = unpronounced.join(', ');
  return (
    <p class="trouble" role="status">
      {trouble ?? advice} {say(LEAVES[soundLeaves])}{' '}
      {words !== '' && say('unpronounced', { words })}
    </p>
  );
}
