/** The general warning sign (ISO 7010 W001), drawn by us. Only beside a caution. */

import { frameTexts } from '../../texts/index.ts';
import { useSay } from '../use-say.ts';

export function WarningSign() {
  const say = useSay(frameTexts);
  return (
    <svg class="sign" viewBox="-1 -1 50 46" role="img" aria-label={say('caution')}>
      <path
        d="M24 3 45 40H3z"
        fill="none"
        stroke="var(--safety-yellow)"
        stroke-width="6.5"
        stroke-linejoin="round"
      />
      <path
        d="M24 3 45 40H3z"
        fill="var(--safety-yellow)"
        stroke="var(--safety-black)"
        stroke-width="4"
        stroke-linejoin="round"
      />
      <path d="M24 15v12" stroke="var(--safety-black)" stroke-width="4.5" stroke-linecap="round" />
      <circle cx="24" cy="33.5" r="2.7" fill="var(--safety-black)" />
    </svg>
  );
}
