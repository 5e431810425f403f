/** The voices that are kept on this device, each of which can be forgotten. */

import { useState } from 'preact/hooks';
import { earTexts } from '../../texts/index.ts';
import { useSay } from '../use-say.ts';
import type { EarBench } from '../world.ts';

export function KeptVoices({ earBench }: { readonly earBench: EarBench }) {
  const say = useSay(earTexts);
  const [message, setMessage] = useState('');
  const voices = earBench.voices();
  const forget = (key: string) => {
    earBench.forget(key);
    setMessage(say('forgotten'));
  };
  return (
    <section class="stack" aria-labelledby="voices-title">
      <h2 id="voices-title">{say('keptTitle')}</h2>
      {voices.length === 0 && <p>{say('keptNone')}</p>}
      <ul class="kept-voices">
        {voices.map(({ key, person, phrases }) => (
          <li key={key} class="row">
            <span>{say('keptOne', { name: person, n: phrases.length })}</span>
            <button
              type="button"
              class="button ear-button"
              aria-label={say('forgetName', { name: person })}
              onClick={() => forget(key)}
            >
              {say('forget')}
            </button>
          </li>
        ))}
      </ul>
      <p role="status">{message}</p>
    </section>
  );
}
