/** Follows one live run: every change of it draws the Bench anew. */

import { useCallback } from 'preact/hooks';
import { useChanges } from '../use-changes.ts';
import type { LiveRun } from '../world.ts';

export function useLiveRun(run: LiveRun): ReturnType<LiveRun['current']> {
  useChanges(useCallback((changed) => run.subscribe(changed), [run]));
  return run.current();
}
