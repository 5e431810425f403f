/** Works a job out again in the middle of it: another tool, another material, or the speed that really runs. Pure. */

import { flowTexts, sayIn } from '../texts/index.ts';
import { speedOf } from './chart-world.ts';
import { compileJob, type Job } from './compile.ts';
import type { FlowContext } from './events.ts';
import { type Numbers, type Running, workOut } from './numbers.ts';
import { type FlowSnapshot, planAt, stepJob } from './position.ts';
import { speedSpoken } from './speed-told.ts';

/** Kept in the record as it stands, so that a run can be replayed. */
export type Adjustment =
  /** A choice of the flow, made anew. */
  | { readonly type: 'adjust'; readonly input: string; readonly value: string }
  /** What the machine is set to, in the base unit of its speed (rev/min, m/min); `toSet` is a speed that is still to be set, as a fault walk offers it. */
  | { readonly type: 'running'; readonly speed: number; readonly toSet?: boolean }
  /** Another feed of the card, in mm/rev, as a fault walk offers it. */
  | { readonly type: 'feeding'; readonly feed: number };

export type Adjusted =
  | {
      readonly ok: true;
      readonly job: Job;
      readonly snapshot: FlowSnapshot;
      /** Where it stood, seen with the new numbers. */
      readonly before: FlowSnapshot;
    }
  /** Nothing is changed; one sentence says what is in the way. */
  | { readonly ok: false; readonly fault: string; readonly source?: string };

/** The working whose answer is the speed of the step a snapshot stands in, if one is. */
export function speedWorking(job: Job, snapshot: FlowSnapshot): string | undefined {
  return workingBehind(job, snapshot, 'speed');
}

/** The working whose answer is the feed of that step, if one is. */
export function feedWorking(job: Job, snapshot: FlowSnapshot): string | undefined {
  return workingBehind(job, snapshot, 'feed');
}

function workingBehind(job: Job, snapshot: FlowSnapshot, of: 'speed' | 'feed') {
  const step = planAt(job, snapshot)?.step;
  const ref = step?.kind === 'cut' || step?.kind === 'passes' ? step[of] : undefined;
  return ref && 'working' in ref && ref.part === undefined ? ref.working : undefined;
}

export function adjustJob(job: Job, snapshot: FlowSnapshot, change: Adjustment): Adjusted {
  if (snapshot.status !== 'active') return refused(sayIn(job.flow.language, flowTexts)('jobDone'));
  if (change.type === 'adjust') return chooseAnew(job, snapshot, change.input, change.value);
  if (change.type === 'feeding') return feedAt(job, snapshot, change.feed);
  return runAt(job, snapshot, change.speed, change.toSet === true);
}

/** Only a feed that the machine has: nothing is worked out that it cannot be set to. */
function feedAt(job: Job, snapshot: FlowSnapshot, feed: number): Adjusted {
  const working = feedWorking(job, snapshot);
  const { feeds } = job.card.values;
  const known = Array.isArray(feeds) && (feeds as readonly number[]).includes(feed);
  if (working === undefined || !known)
    return refused(sayIn(job.flow.language, flowTexts)('noSuchFeed'));
  const { inputs, running } = job.numbers;
  const next = { inputs, running: { ...running, [working]: feed } };
  return carriedOver(job, snapshot, next, (context) => context);
}

function refused(fault: string): Adjusted {
  return { ok: false, fault };
}

function chooseAnew(job: Job, snapshot: FlowSnapshot, input: string, value: string): Adjusted {
  const inputs = { ...job.numbers.inputs, [input]: value };
  const was = workOut(job.flow, job.card, job.numbers.inputs);
  const is = workOut(job.flow, job.card, inputs);
  if (!is.ok) return refused(is.faults[0] ?? '');
  const running = was.ok ? stillRunning(job, snapshot, was.numbers, is.numbers) : {};
  return carriedOver(job, snapshot, { inputs, running }, (context) => context);
}

/** A speed that runs is kept where the choice has nothing to do with it. */
function stillRunning(job: Job, snapshot: FlowSnapshot, was: Numbers, is: Numbers): Running {
  const { readings } = snapshot.context;
  const same = ([working]: readonly [string, number]) =>
    was.number({ working }, readings) === is.number({ working }, readings);
  return Object.fromEntries(Object.entries(job.numbers.running).filter(same));
}

function runAt(job: Job, snapshot: FlowSnapshot, speed: number, toSet: boolean): Adjusted {
  const working = speedWorking(job, snapshot);
  if (working === undefined) return refused(sayIn(job.flow.language, flowTexts)('nothingTurns'));
  if (!(speed > 0)) {
    return refused(sayIn(job.flow.language, flowTexts)('aboveNothing'));
  }
  const limit = limitsOn(job, snapshot, working).find((one) => speed > one.value);
  if (limit) {
    const spoken = speedSpoken(job, limit.value);
    const say = sayIn(job.flow.language, flowTexts);
    const fault = say('overLimit', { owner: limit.owner, speed: spoken });
    return { ok: false, fault, source: job.card.title };
  }
  const { inputs, running } = job.numbers;
  const set = (context: FlowContext) => (toSet ? context : believing(job, context, speed));
  return carriedOver(job, snapshot, { inputs, running: { ...running, [working]: speed } }, set);
}

/** What was said to be set is set to this speed; where nothing was said, it is still asked for. */
function believing(job: Job, context: FlowContext, speed: number): FlowContext {
  const role = job.flow.kind.roles.speed;
  return context.facts[role.fact] === role.set ? { ...context, speedSet: speed } : context;
}

interface Limit {
  readonly owner: string;
  readonly value: number;
}

const owners = ['chuckLimit', 'workLimit', 'cardLimit'] as const;

/** The limits on a speed, lowest first: those its working is given, and those of the card in any case. */
function limitsOn(job: Job, snapshot: FlowSnapshot, working: string): readonly Limit[] {
  const given = job.flow.scope.workings.get(working)?.given ?? {};
  const { chuckLimit, topSpeed } = job.card.values;
  const ofCard: Readonly<Record<string, unknown>> = { chuckLimit, cardLimit: topSpeed };
  return owners
    .flatMap((name) => {
      const owner = sayIn(job.flow.language, flowTexts)(name);
      const ref = given[name];
      const named = ref && job.numbers.number(ref, snapshot.context.readings);
      const ofWork = name === 'workLimit' ? workLimits(job, snapshot, working) : [];
      return [named, ofCard[name], ...ofWork].flatMap((value) =>
        typeof value === 'number' ? [{ owner, value }] : [],
      );
    })
    .sort((a, b) => a.value - b.value);
}

/** What the work allows at every step that turns at this speed. */
function workLimits(job: Job, { context }: FlowSnapshot, working: string) {
  return job.flow.file.steps.flatMap((step) => {
    const stated = 'speed' in step && 'working' in step.speed && step.speed.working === working;
    const ref = stated ? step.workLimit : undefined;
    return ref ? [job.numbers.number(ref, context.readings)] : [];
  });
}

function carriedOver(
  job: Job,
  snapshot: FlowSnapshot,
  { inputs, running }: Pick<Numbers, 'inputs' | 'running'>,
  believe: (context: FlowContext) => FlowContext,
): Adjusted {
  const made = compileJob(job.flow, job.card, inputs, running);
  if (!made.ok) return refused(made.faults[0] ?? '');
  const lost = lostWorking(job, made.job, snapshot);
  if (lost !== undefined) return refused(lost);
  const before = made.job.machine.resolveState({
    value: snapshot.value,
    context: believe(snapshot.context),
  });
  const plan = planAt(made.job, before);
  if (plan?.powered && speedOf(plan, made.job.numbers, before.context) === null) {
    return refused(sayIn(job.flow.language, flowTexts)('noSpeed'));
  }
  return {
    ok: true,
    job: made.job,
    snapshot: stepJob(made.job, before, { type: 'adjusted' }),
    before,
  };
}

/** A working that stood on readings already taken and that a rule would now refuse. */
function lostWorking(job: Job, next: Job, snapshot: FlowSnapshot): string | undefined {
  const { readings } = snapshot.context;
  for (const [id, { label }] of job.flow.scope.workings) {
    const answer = next.numbers.working(id, readings);
    if (!answer.ok && job.numbers.working(id, readings).ok) return `${label}: ${answer.fault}`;
  }
  return undefined;
}
