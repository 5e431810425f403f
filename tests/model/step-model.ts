/**
 * The chart of one step as a model for @xstate/test: the job's own machine, entered at the step, left when the step is.
 *
 * A step is entered with everything known that a person who came there has answered, but for one condition of its gate.
 * Its events are what the said list shows first, the verdicts of a size, and one loss. The product over all steps is out
 * of reach for paths; the prover walks it by sets.
 */

import { createTestModel } from '@xstate/test';
import {
  accepts,
  askedFacts,
  type FlowEvent,
  type FlowSnapshot,
  type Job,
  judge,
  limitsOf,
  plausibleRange,
  positionOf,
  stepJob,
} from '../../src/flow/index.ts';
import { identityOf } from '../../src/proof/identity.ts';

/** The events that are tried at a state of the step: few, and each leads somewhere. */
export function eventsOf(job: Job, snapshot: FlowSnapshot): readonly FlowEvent[] {
  const { power } = job.flow.kind.roles;
  const [asked] = askedFacts(job, snapshot);
  const moves = (['next', 'carry-on', 'back', 'hold'] as const).map((type) => ({ type }));
  const step = job.flow.steps.get(positionOf(snapshot).step);
  const events: readonly FlowEvent[] = [
    ...(asked ? [{ type: 'fact' as const, fact: asked.fact.id, state: asked.state.id }] : []),
    { type: 'fact', fact: power.fact, state: power.on },
    ...moves,
    ...walksAt(job, snapshot).map(({ id }) => ({ type: 'trouble' as const, walk: id })),
    ...(step?.kind === 'choose'
      ? step.options.map((option) => ({ type: 'choose' as const, option: option.id }))
      : []),
    ...sizesAt(job, snapshot).map((value) => ({ type: 'reading' as const, value })),
  ];
  return events.filter((event) => accepts(snapshot, event));
}

/** At the gate one stands for all: the walk by words (tests/bench/by-words) takes each of those arrows. */
function walksAt({ flow }: Job, snapshot: FlowSnapshot) {
  return positionOf(snapshot).phase === 'gate' ? flow.kind.walks.slice(0, 1) : flow.kind.walks;
}

/** One size for each verdict, and one where nothing is judged. */
export function sizesAt(job: Job, snapshot: FlowSnapshot): readonly number[] {
  const step = job.flow.steps.get(positionOf(snapshot).step);
  const { readings } = snapshot.context;
  const range = step && plausibleRange(step, job.numbers, readings);
  if (!step || !range) return [];
  if (step.kind !== 'inspect' && step.kind !== 'passes') return [range.lower];
  const limits = limitsOf(step, job.numbers, readings);
  if (!limits) return [];
  const tried = [limits.lower, limits.lower - 0.05, limits.upper + 0.05].filter(
    (value) => value >= range.lower && value <= range.upper,
  );
  const verdicts = new Map(tried.map((value) => [judge(value, limits, step.side), value]));
  return [...verdicts.values()];
}

/** Where a person stands who has come to a step in good order, with one condition of its gate still open. */
export function entryOf(job: Job, step: string, come: FlowSnapshot): FlowSnapshot {
  const plan = job.plans.get(step);
  let snapshot = come;
  const open = Object.keys(plan?.gate ?? {}).length;
  for (let answered = 0; answered < open; answered += 1) {
    const asked = askedFacts(job, snapshot);
    const [first] = asked;
    if (!first || asked.length === 1 || positionOf(snapshot).phase !== 'gate') break;
    snapshot = stepJob(job, snapshot, { type: 'fact', fact: first.fact.id, state: first.state.id });
  }
  return snapshot;
}

/** Every situation with the word that led there: paths to all of these take every transition. */
export function byTransition(snapshot: unknown, event: unknown, before: unknown): string {
  const from = before ? identityOf(before as FlowSnapshot) : '';
  return `${identityOf(snapshot as FlowSnapshot)} ${from} ${JSON.stringify(event)}`;
}

/** A walk that begins at the gate goes the ways of one that begins at the start: as arrows they are all taken. */
const notFromGate = (snapshot: unknown, { type }: FlowEvent) =>
  type !== 'trouble' || positionOf(snapshot as FlowSnapshot).phase !== 'gate';

/** The places of the step alone: on these every simple path can be walked; facts are answered on the way. */
export function byPlace(snapshot: unknown): string {
  const { value, context } = snapshot as FlowSnapshot;
  return JSON.stringify([value, context.held?.to]);
}

export function modelOf(
  job: Job,
  step: string,
  entry: FlowSnapshot,
  identity: (snapshot: unknown, event: unknown, before: unknown) => string,
) {
  const known = new Map<string, readonly FlowEvent[]>();
  const eventsAt = (snapshot: FlowSnapshot) => {
    const key = identityOf(snapshot);
    const events = known.get(key) ?? eventsOf(job, snapshot);
    known.set(key, events);
    return events;
  };
  const model = createTestModel(job.machine as unknown as Parameters<typeof createTestModel>[0]);
  const options = {
    fromState: entry,
    events: (snapshot: unknown) => {
      const events = eventsAt(snapshot as FlowSnapshot);
      return identity === byPlace ? events.filter((one) => notFromGate(snapshot, one)) : events;
    },
    serializeState: identity,
    serializeEvent: (event: unknown) => JSON.stringify(event),
    stopCondition: (snapshot: unknown) => positionOf(snapshot as FlowSnapshot).step !== step,
  };
  return {
    model,
    options: options as unknown as NonNullable<Parameters<typeof model.getSimplePaths>[0]>,
  };
}
