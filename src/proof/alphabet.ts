/** Everything that can be said or can happen in a step: what is explored, whether the said list shows it or not. */

import {
  type FlowEvent,
  type FlowSnapshot,
  isLoss,
  type Job,
  limitsOf,
  type Phase,
  planAt,
  plausibleRange,
  type Readings,
  type Step,
} from '../flow/index.ts';

/** Just beside a limit: twice the finest size that readings are told apart by (verdict.ts). */
const beside = 2e-5;

const moves = ['next', 'carry-on', 'back', 'hold', 'stop', 'interrupted'] as const;

/** Words, choices, reports and breaks of a step: all but its readings, which depend on the moment. */
export function wordsOf(job: Job, step: Step | undefined): readonly FlowEvent[] {
  const { facts, walks } = job.flow.kind;
  return [
    ...moves.map((type): FlowEvent => ({ type })),
    ...facts.flatMap((fact) =>
      fact.states.map(
        (state): FlowEvent => ({
          type: 'fact',
          fact: fact.id,
          state: state.id,
        }),
      ),
    ),
    ...(step?.kind === 'choose'
      ? step.options.map((option): FlowEvent => ({ type: 'choose', option: option.id }))
      : []),
    ...(step?.release ? [{ type: 'release' } as const] : []),
    ...walks.map((walk): FlowEvent => ({ type: 'trouble', walk: walk.id })),
  ];
}

/** Sizes on both sides of every limit and on it, and what is no size at all. */
export function sizesOf(job: Job, step: Step | undefined, readings: Readings): readonly number[] {
  if (!step || !('reading' in step)) return [];
  const judged = step.kind === 'inspect' || step.kind === 'passes';
  const limits = [
    plausibleRange(step, job.numbers, readings),
    judged ? limitsOf(step, job.numbers, readings) : undefined,
  ];
  const sizes = limits.flatMap((limit) =>
    limit ? [...around(limit.lower), ...around(limit.upper)] : [],
  );
  return [...new Set(sizes)];
}

/** Refused everywhere. */
export const noSizes = [Number.NaN, Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY];

function around(limit: number): readonly number[] {
  return [limit - beside, limit, limit + beside];
}

/** Every event at a snapshot. */
export function eventsAt(job: Job, snapshot: FlowSnapshot): readonly FlowEvent[] {
  const step = planAt(job, snapshot)?.step;
  const sizes = sizesOf(job, step, snapshot.context.readings);
  return [...wordsOf(job, step), ...sizes.map((value): FlowEvent => ({ type: 'reading', value }))];
}

/** The kinds of event that some state that stands has an arrow for. */
export function heardAt({ _nodes }: FlowSnapshot): ReadonlySet<string> {
  return new Set(_nodes.flatMap(({ config }) => Object.keys(config.on ?? {})));
}

/** False where no state that stands has an arrow for such an event: it is refused without a look. */
export function hears(snapshot: FlowSnapshot, event: FlowEvent): boolean {
  return snapshot._nodes.some(({ config }) => config.on !== undefined && event.type in config.on);
}

/** True for what a person says to go on: no report of a loss, no hold, no stop, no break. */
export function goesOn(job: Job, phase: Phase, event: FlowEvent): boolean {
  if (event.type === 'fact') return answers(job, phase, event.fact, event.state);
  return event.type !== 'hold' && event.type !== 'stop' && event.type !== 'interrupted';
}

/** As the said list has it: a state that is a loss is asked for only where the start waits for it. */
function answers(job: Job, phase: Phase, fact: string, state: string): boolean {
  if (!isLoss(job.flow.kind, fact, state)) return true;
  const { power } = job.flow.kind.roles;
  return phase === 'start' && fact === power.fact && state === power.on;
}
