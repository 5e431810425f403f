/** From where the edges that a distance names are taken: their ends at the side where the dimension stands. */

import type { Trace } from './views.ts';
import type { Wanted } from './wanted.ts';

const SAME = 1e-6;

/** Which end of an edge, along the axis that it runs. */
export type EdgeEnd = 'low' | 'high';

/** For both ends of a distance, how far its edge reaches; nothing where an edge is not there to be seen. */
export function edgeEnds(
  traces: readonly Trace[],
  runs: 'across' | 'up',
  { span, feature }: Wanted,
  end: EdgeEnd,
): readonly [number, number] | undefined {
  const [one, other] = span.map((at) => edgeEnd(traces, runs, at, feature, end));
  return one === undefined || other === undefined ? undefined : [one, other];
}

/** An edge of the feature itself before any other that lies there. */
function edgeEnd(
  traces: readonly Trace[],
  runs: 'across' | 'up',
  at: number,
  feature: string,
  end: EdgeEnd,
): number | undefined {
  const [fixed, along] = runs === 'up' ? ([0, 1] as const) : ([1, 0] as const);
  const there = traces.filter(
    ({ pen, points }) =>
      pen !== 'stock' && points.length === 2 && points.every((p) => Math.abs(p[fixed] - at) < SAME),
  );
  const own = there.filter((trace) => trace.feature === feature);
  const edges = own.length > 0 ? own : there.filter(({ pen }) => pen !== 'centre');
  const reach = edges.flatMap(({ points }) => points.map((p) => p[along]));
  if (reach.length === 0) return undefined;
  return end === 'low' ? Math.min(...reach) : Math.max(...reach);
}
