/** Trouble with ear, mouth or storage, in one line; and sound that waits for the first touch. */

import { useEffect, useState } from 'preact/hooks';
import type { Notice } from '../../bench/index.ts';
import type { LiveRun } from '../world.ts';

interface NoticesProps {
  readonly notice: Notice;
  readonly run: LiveRun;
  readonly resumed: boolean;
}

export function Notices({ notice, run, resumed }: NoticesProps) {
  const asleep = useAsleep(resumed);
  const line = notice.trouble ?? notice.advice;
  return (
    <>
      {asleep && (
        <button type="button" class="button say asleep" onClick={() => run.repeat()}>
          Touch here to hear it: the browser keeps silent until then.
        </button>
      )}
      {line !== null && (
        <p class="trouble" role="status">
          {line}
        </p>
      )}
    </>
  );
}

/** A browser lets no page sound before somebody has touched it. After a reload nobody has. */
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
