/** Keeps the screen awake while a run is on the Bench, where the browser can. */

import type { ScreenLock } from '../bench/ports.ts';

/** The browser lets go whenever the page is hidden, so it is asked again each time it is seen. */
export function browserScreenLock(): ScreenLock {
  let wanted = false;
  let held: WakeLockSentinel | undefined;
  const take = async (): Promise<boolean> => {
    if (!wanted || document.visibilityState !== 'visible') return false;
    try {
      held = await navigator.wakeLock?.request('screen');
      return held !== undefined;
    } catch {
      // Low battery or a policy: the screen may sleep, which is no danger.
      return false;
    }
  };
  document.addEventListener('visibilitychange', () => void take());
  return {
    hold() {
      wanted = true;
      return take();
    },
    async release() {
      wanted = false;
      await held?.release();
      held = undefined;
    },
  };
}
