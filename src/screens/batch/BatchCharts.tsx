/** The charts of a kept batch: its pieces are read, and the last one's flow says which sizes they have. */

import { useCallback } from 'preact/hooks';
import { characteristics } from '../../bench/index.ts';
import { stateOfRun } from '../shelf/run-place.ts';
import { useAwaited } from '../use-changes.ts';
import type { WorldProps } from '../world.ts';
import { BatchSizes } from './BatchSizes.tsx';

interface BatchChartsProps extends WorldProps {
  readonly batch: string;
}

export function BatchCharts({ world, batch }: BatchChartsProps) {
  const pieces = useAwaited(
    useCallback(() => world.batch(batch), [world, batch]),
    [world, batch],
  );
  if (pieces.is === 'failed') return <p class="fault">{pieces.why}</p>;
  const last = pieces.is === 'here' ? pieces.value.at(-1) : undefined;
  const state = last && stateOfRun(last);
  if (pieces.is !== 'here' || !state) return null;
  const readings = pieces.value.map((run) => run.readings);
  return <BatchSizes job={state.job} sizes={characteristics(state.job, readings)} />;
}
