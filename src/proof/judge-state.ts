/** What the claims say of one snapshot. The plain walk and the reduced one run these very functions. */

import {
  accepts,
  type Condition,
  type FlowEvent,
  type FlowSnapshot,
  type Hazard,
  type Job,
  type Phase,
  planAt,
  plausibleRange,
  positionOf,
  releaseFact,
  type StepPlan,
  stateOf,
  unknownState,
  type WantedFacts,
} from '../flow/index.ts';
import { alikeWhere } from './alike.ts';
import { goesOn, heardAt, hears, noSizes, sizesOf, wordsOf } from './alphabet.ts';
import { isRuledOut, isSo } from './condition.ts';
import { tell } from './tell.ts';

/** Readings are told apart no finer than this (verdict.ts). */
const resolution = 1e-5;

/** One claim broken, in words. */
export interface Broken {
  readonly claim: string;
  readonly message: string;
}

/**
 * One question put to a snapshot. Each reads few facts, since the reduced walk tells apart exactly what is read:
 * "are all that are missing sayable" is asked fact by fact.
 */
export interface Question {
  readonly claim: string;
  /** Where two questions have the same text here, the answer is the same in any step: it reads facts alone. */
  readonly alike?: string;
  /** The sentence that says what is wrong, or nothing. */
  ask(snapshot: FlowSnapshot): string | undefined;
}

/** The questions for every snapshot that stands where this one stands. */
export function questionsAt(job: Job, at: FlowSnapshot): readonly Question[] {
  const { step, phase } = positionOf(at);
  const plan = planAt(job, at);
  const near = job.flow.kind.hazards.filter(({ never }) => !isRuledOut(never, job, at));
  const hazards = near.map(
    (hazard): Question => ({
      claim: hazard.id,
      ...alikeAs(hazard, plan, at),
      ask: (snapshot) => (isSo(hazard.never, job, snapshot) ? hazard.sentence : undefined),
    }),
  );
  if (!plan) return hazards;
  return [
    ...hazards,
    powerQuestion(job, at),
    stopQuestion(job, 'stop', step, at),
    stopQuestion(job, 'hold', step, at),
    onwardQuestion(job, plan, at),
    ...releaseQuestions(job, plan, phase),
    ...missingQuestions(job, plan, phase, at),
    ...sizeQuestions(job, plan, at),
  ];
}

/** A hazard reads facts, moments and what a step asks for; only a speed makes it the step's own. */
function alikeAs({ id, never }: Hazard, plan: StepPlan | undefined, at: FlowSnapshot) {
  if (asksSpeed(never)) return {};
  const { phase } = positionOf(at);
  const step = phase === 'open' ? plan?.step : undefined;
  const asked = step?.kind === 'check' ? step.facts : step?.kind === 'do' ? step.ends : {};
  return { alike: JSON.stringify([id, phase === 'end', [...at.tags].sort(), Object.keys(asked)]) };
}

function asksSpeed(condition: Condition): boolean {
  if ('all' in condition) return condition.all.some(asksSpeed);
  if ('any' in condition) return condition.any.some(asksSpeed);
  return 'speedAbove' in condition;
}

/** A walk that waits until it stands still is like a hold: it asks for nothing else. */
function powerQuestion(job: Job, at: FlowSnapshot): Question {
  const { power } = job.flow.kind.roles;
  const { phase, walk } = positionOf(at);
  const may = ['cutting', 'stopping', 'hold'].includes(phase) || walk?.item === 'settle';
  const ask = ({ context }: FlowSnapshot) =>
    !may && stateOf(context.facts, power.fact) === power.on
      ? tell(
          job,
        )`It is known to be ${power.on}, and this is no cut, and nothing asks for it to stop.`
      : undefined;
  return { claim: 'FORMAT-POWER', alike: `FORMAT-POWER ${may}`, ask };
}

function stopQuestion(job: Job, type: 'stop' | 'hold', step: string, at: FlowSnapshot): Question {
  const ask = (snapshot: FlowSnapshot) =>
    accepts(snapshot, { type }) ? undefined : tell(job)`"${type}" is not heard in step "${step}".`;
  return { claim: 'FORMAT-STOP', ...alikeWhere(at, 'FORMAT-STOP', [type]), ask };
}

/** Where next is refused, something else that goes on is taken. */
function onwardQuestion(job: Job, plan: StepPlan, at: FlowSnapshot): Question {
  const { phase } = positionOf(at);
  const heard = heardAt(at);
  const words = wordsOf(job, plan.step).filter(
    (event) =>
      heard.has(event.type) &&
      goesOn(job, phase, event) &&
      event.type !== 'back' &&
      event.type !== 'trouble',
  );
  // What is asked for first: the sooner a word is taken, the fewer facts are looked at.
  const wanted = wantedBy(plan);
  words.sort((a, b) => Number(isWanted(wanted, b)) - Number(isWanted(wanted, a)));
  // No size is heard where no reading is taken; then words and arrows tell all.
  const types = new Set(['reading', ...words.map(({ type }) => type)]);
  const alike = alikeWhere(at, JSON.stringify(['FORMAT-NAMES', words]), [...types]);
  const ask = (snapshot: FlowSnapshot) => {
    const sizes = sizesOf(job, plan.step, snapshot.context.readings);
    // Sizes first: they are judged without a look at any fact.
    const onward: readonly FlowEvent[] = [
      ...sizes.map((value): FlowEvent => ({ type: 'reading', value })),
      ...words,
    ];
    return onward.some((event) => accepts(snapshot, event))
      ? undefined
      : tell(job)`"next" is refused, and nothing can be said that would help.`;
  };
  return { claim: 'FORMAT-NAMES', ...alike, ask };
}

function wantedBy({ gate, step }: StepPlan): WantedFacts {
  const open = step.kind === 'check' ? step.facts : step.kind === 'do' ? step.ends : {};
  return { ...gate, ...open };
}

function isWanted(wanted: WantedFacts, event: FlowEvent): boolean {
  return event.type !== 'fact' || wanted[event.fact] === event.state;
}

/** Beyond its gate a step that waits for an instructor has been released. */
function releaseQuestions(job: Job, { step }: StepPlan, phase: Phase): readonly Question[] {
  // A fault walk opens at the gate as well, and goes back to it.
  if (!step.release || ['gate', 'hold', 'walk'].includes(phase)) return [];
  const ask = ({ context }: FlowSnapshot) =>
    stateOf(context.facts, releaseFact) === unknownState
      ? tell(job)`"${step.title}" stands open, and no instructor has released it.`
      : undefined;
  return [{ claim: 'FORMAT-RELEASE', ask }];
}

/** Each condition of a gate that is not met can be answered, and has a word. */
function missingQuestions(
  job: Job,
  plan: StepPlan,
  phase: Phase,
  at: FlowSnapshot,
): readonly Question[] {
  if (phase !== 'gate') return [];
  return Object.entries(plan.gate).map(([fact, state]) => ({
    claim: 'FORMAT-NAMES',
    ...alikeWhere(at, JSON.stringify(['missing', fact, state]), ['fact', 'release']),
    ask: (snapshot) => {
      if (stateOf(snapshot.context.facts, fact) === state) return undefined;
      const word = accepts(snapshot, { type: 'fact', fact, state });
      if (fact === releaseFact) return judgeRelease(job, word, snapshot);
      if (word) return undefined;
      return tell(job)`"${wordFor(job, fact, state)}" is wanted here, and cannot be said.`;
    },
  }));
}

/** Only an instructor opens a release: no word does, and where it is missing it can be given. */
function judgeRelease(job: Job, word: boolean, snapshot: FlowSnapshot): string | undefined {
  if (word) return tell(job)`A word answers for the instructor.`;
  return accepts(snapshot, { type: 'release' })
    ? undefined
    : tell(job)`No release can be given here.`;
}

export function wordFor(job: Job, fact: string, state: string): string {
  const states = job.flow.kind.facts.find((one) => one.id === fact)?.states;
  return states?.find((one) => one.id === state)?.word ?? `${fact} ${state}`;
}

function sizeQuestions(job: Job, plan: StepPlan, at: FlowSnapshot): readonly Question[] {
  const { step } = plan;
  if (!('reading' in step)) return [];
  const takes = (snapshot: FlowSnapshot, value: number) =>
    accepts(snapshot, { type: 'reading', value });
  const strange = (snapshot: FlowSnapshot) => {
    const { readings } = snapshot.context;
    const range = plausibleRange(step, job.numbers, readings);
    const outside = sizesOf(job, step, readings).filter(
      (value) => !range || value < range.lower - resolution || value > range.upper + resolution,
    );
    const taken = [...outside, ...noSizes].find((value) => takes(snapshot, value));
    return taken === undefined
      ? undefined
      : tell(job)`${taken} is outside its range, and is taken.`;
  };
  const lost = (snapshot: FlowSnapshot) => {
    const { readings } = snapshot.context;
    const range = plausibleRange(step, job.numbers, readings);
    const inside = sizesOf(job, step, readings).filter(
      (value) => range && value >= range.lower && value <= range.upper,
    );
    if (inside.length === 0) return tell(job)`There is no size that could be taken.`;
    const refused = inside.find((value) => !takes(snapshot, value));
    return refused === undefined ? undefined : tell(job)`The size ${refused} leads nowhere.`;
  };
  return [
    ...(hears(at, { type: 'reading', value: 0 }) ? [{ claim: 'FORMAT-RANGE', ask: strange }] : []),
    ...(at.tags.has('measuring') ? [{ claim: 'FORMAT-VERDICT', ask: lost }] : []),
  ];
}
