/** The browser's clock as the bench knows it. */

import type { Clock } from '../bench/ports.ts';

export const browserClock: Clock = {
  now: () => Date.now(),
  after(ms, call) {
    const timer = setTimeout(call, ms);
    return () => clearTimeout(timer);
  },
};
