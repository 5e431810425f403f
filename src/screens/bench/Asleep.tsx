/** Sound that waits for the first touch: a browser lets no page sound before. */

import { useEffect, useState } from 'preact/hooks';
import { dockTexts } from '../../texts/index.ts';
import { useSay } from '../use-say.ts';
import type { LiveRun } from '../world.ts';

interface AsleepProps {
  readonly run: LiveRun;
  readonly resumed: boolean;
}

export function Asleep({ run, resumed }: AsleepProps) {
  const say = useSay(dockTexts);
  if (!useAsleep(resumed)) return null;
  return (
    <button type="button" class="button say asleep" onClick={() => run.repeat()}>
      {say('asleep')}
    </button>
  );
}

/** After a reload nobody has touched the page. Any key or touch ends it. */
function useAsleep(resumed: boolean): boolean {
  const [asleep, setAsleep] = useState(resumed && !navigator.userActivation?.hasBeenActive);
  useEffect(() => {
    if (!asleep) return;
    const wake = () => setAsleep(false);
    window.addEventListener('click', wake);
    window.addEventListener('keydown', wake);
    return () => {
      window.removeEventListener('click', wake);
      window.removeEventListener('keydown', wake);
    };
  }, [asleep]);
  return asleep;
}
