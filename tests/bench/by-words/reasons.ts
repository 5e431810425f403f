/** Why an arrow cannot be taken where a path comes to it: what the chart's own rules say, and nothing else. */

import type { RunState } from '../../../src/bench/index.ts';
import type { Job } from '../../../src/flow/index.ts';
import type { ChartArrow, StepChart } from './step-chart.ts';

export const reasons = {
  gauge: 'a hold goes on to the gauge only where it was begun there',
  notGauge: 'a hold that was begun at the gauge goes on there',
  passed: 'nothing is open at this gate, so it is passed in the same breath',
  powerAlone: 'what is asked for is standstill alone, and what turns is another arrow',
  ownFirst:
    'the state has an arrow of its own for this word, so what it inherits never comes to its turn',
  asksNothing: 'this cause of a trouble asks for nothing that could be answered',
} as const;

export type Reason = (typeof reasons)[keyof typeof reasons];

/** Nothing where no rule of the chart is in the way: then somebody should have been able to take it. */
export function reasonAgainst(
  { job, snapshot }: RunState,
  chart: StepChart,
  arrow: ChartArrow,
): Reason | undefined {
  const { held } = snapshot.context;
  if (arrow.event === 'carry-on' && held && arrow.from === 'hold') {
    if (arrow.to === 'measure' && held.to !== 'measure') return reasons.gauge;
    if (arrow.to !== 'measure' && held.to === 'measure') return reasons.notGauge;
  }
  return neverTaken(job, chart, arrow);
}

/** For arrows that are nowhere to be taken. */
export function neverTaken(job: Job, chart: StepChart, arrow: ChartArrow): Reason | undefined {
  const { from, event, guard, params } = arrow;
  const all = [...chart.arrows, ...chart.stays].filter(
    (one) => one.from === from && one.event === event,
  );
  const number = ({ name }: ChartArrow) => Number(/#(\d+) /.exec(name)?.[1]);
  if (all.some((one) => one.guard === '' && number(one) < number(arrow))) return reasons.ownFirst;
  if (guard === 'answers' && Object.keys(params.wanted ?? {}).length === 0) {
    return reasons.asksNothing;
  }
  // Power that comes on is a hold of its own: it stands before the arrow for whatever else is not as it must be.
  const { power } = job.flow.kind.roles;
  const wanted = Object.keys(guard === 'notMet' ? (params.wanted ?? {}) : {});
  const before = all.some((one) => one.guard === 'powerOn' && number(one) < number(arrow));
  const alone = wanted.length === 1 && wanted[0] === power.fact;
  return alone && before ? reasons.powerAlone : undefined;
}
