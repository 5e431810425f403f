/** How loud it is at the microphone, and what to do about it. */

import type { EarReport } from '../../bench/index.ts';
import { earTexts } from '../../texts/index.ts';
import { useSay } from '../use-say.ts';

const QUIETEST = -80;

interface MicrophoneLevelProps {
  readonly level: Extract<EarReport, { kind: 'level' }> | null;
  readonly noisy: boolean;
}

export function MicrophoneLevel({ level, noisy }: MicrophoneLevelProps) {
  const say = useSay(earTexts);
  const advice = noisy ? say('tooNoisy') : (level?.advice ?? say('levelGood'));
  return (
    <section class="card stack" aria-labelledby="level-title">
      <h2 id="level-title">{say('levelTitle')}</h2>
      <p>{say('levelAbout')}</p>
      <p class="meter-line">
        <meter
          class="meter"
          aria-label={say('level')}
          min={QUIETEST}
          max={0}
          value={level?.decibels ?? QUIETEST}
        />
        <span>{level && say('decibels', { n: level.decibels })}</span>
      </p>
      <p role="status">
        <strong>{level ? advice : say('noLevel')}</strong>
      </p>
    </section>
  );
}
