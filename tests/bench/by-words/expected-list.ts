/**
 * The words that must count at a state, by the flow's own file and the rules of the format: written a second time, and
 * by other means than `saidList`, which asks the chart.
 */

import type { BenchItem, RunState } from '../../../src/bench/index.ts';
import { type Job, positionOf, type Step } from '../../../src/flow/index.ts';

type Wanted = Readonly<Record<string, string>>;

/** What the chart may be told is of these kinds; questions and settings are not. */
const ofTheJob: ReadonlySet<BenchItem['kind']> = new Set([
  ...(['fact', 'loss', 'choice', 'move', 'drill', 'trouble', 'answer'] as const),
]);

export function isOfTheJob({ kind }: BenchItem): boolean {
  return ofTheJob.has(kind);
}

/** As `id: word`. */
export function listedOf(items: readonly BenchItem[]): readonly string[] {
  return items.filter(isOfTheJob).map(({ id, phrases }) => `${id}: ${phrases[0]}`);
}

/** The facts that a place asks for, and how each must stand. */
export function wantedAt({ job, snapshot }: RunState): Wanted {
  const { step: id, phase, walk } = positionOf(snapshot);
  const { power, tool, speed } = job.flow.kind.roles;
  const step = job.flow.steps.get(id);
  const needs = job.flow.needs.get(id) ?? {};
  const off = { [power.fact]: power.off };
  switch (phase) {
    case 'gate':
      return isPowered(step) ? { ...needs, [speed.fact]: speed.set } : needs;
    case 'start':
      return { [power.fact]: power.on };
    case 'cutting':
      return { [tool.fact]: tool.clear };
    case 'stopping':
      return off;
    case 'hold':
      return snapshot.context.facts[power.fact] === power.off ? needs : off;
    case 'walk':
      return walk?.item === 'settle' ? off : (itemOf(job, walk)?.needs ?? {});
    case 'open':
      return step?.kind === 'check' ? step.facts : step?.kind === 'do' ? step.ends : {};
    default:
      return {};
  }
}

export function isPowered(step: Step | undefined): boolean {
  return step?.kind === 'cut' || step?.kind === 'passes';
}

export function itemOf(job: Job, walk: ReturnType<typeof positionOf>['walk']) {
  return job.flow.kind.walks
    .find(({ id }) => id === walk?.id)
    ?.items.find(({ id }) => id === walk?.item);
}

/** The facts that are asked for now, in the order of the machine kind, each with the word that answers it. */
export function askedAt(state: RunState) {
  const { job, snapshot } = state;
  const wanted = wantedAt(state);
  const { facts } = snapshot.context;
  const isStart = positionOf(snapshot).phase === 'start';
  return job.flow.kind.facts.flatMap((fact) => {
    const answer = fact.states.find(({ id }) => id === wanted[fact.id]);
    const open = answer && facts[fact.id] !== answer.id && (!answer.loss || isStart);
    return open ? [{ fact, word: answer.word, id: `fact:${fact.id}:${answer.id}` }] : [];
  });
}

/** All that may be said of the job now, as `id: word`. */
export function expectedList(state: RunState, mayTakeBack: boolean): readonly string[] {
  const { value } = state.talk;
  if (positionOf(state.snapshot).phase === 'end') return [];
  const steady = ['hold: hold', 'stop: stop'];
  if (value.answer !== 'none') {
    const answer = value.answer === 'questioned' ? 'answer:keep: keep' : 'answer:correct: correct';
    return [answer, 'answer:wrong: wrong', ...steady];
  }
  return [
    ...askedAt(state).map(({ id, word }) => `${id}: ${word}`),
    ...lossesAt(state),
    ...choicesAt(state),
    ...movesAt(state),
    ...steady,
    ...troublesAt(state),
    ...(mayTakeBack ? ['answer:wrong: wrong'] : []),
  ];
}

/** What turns can always be reported; other losses where the step stands on the fact and it is believed. */
function lossesAt(state: RunState): readonly string[] {
  const { job, snapshot } = state;
  const { step: id, phase } = positionOf(snapshot);
  const { power, speed } = job.flow.kind.roles;
  const { facts } = snapshot.context;
  const own = isPowered(job.flow.steps.get(id)) ? [speed.fact] : [];
  const stands = new Set([...Object.keys(job.flow.needs.get(id) ?? {}), ...own]);
  return job.flow.kind.facts.flatMap((fact) =>
    fact.states.flatMap((one) => {
      if (!one.loss || facts[fact.id] === one.id) return [];
      const isPower = fact.id === power.fact;
      if (isPower ? phase === 'start' : !stands.has(fact.id)) return [];
      if (!isPower && facts[fact.id] === 'unknown') return [];
      return [`fact:${fact.id}:${one.id}: ${one.word}`];
    }),
  );
}

function choicesAt({ job, snapshot }: RunState): readonly string[] {
  const { step: id, phase } = positionOf(snapshot);
  const step = job.flow.steps.get(id);
  if (phase !== 'open' || step?.kind !== 'choose') return [];
  return step.options.map((option) => `choose:${option.id}: ${option.word}`);
}

const backFrom: ReadonlySet<string> = new Set(['gate', 'open', 'dial', 'start', 'measure']);

/** "Next" is heard everywhere but in a hold: where it is refused it names what is missing. */
function movesAt({ job, snapshot }: RunState): readonly string[] {
  const { step, phase } = positionOf(snapshot);
  const { power } = job.flow.kind.roles;
  const isFirst = job.flow.file.steps[0]?.id === step;
  const turns = snapshot.context.facts[power.fact] === power.on;
  return [
    ...(phase === 'hold' ? [] : ['next: next']),
    ...(phase === 'hold' || phase === 'walk' ? ['carry-on: carry on'] : []),
    ...(backFrom.has(phase) && !isFirst && !turns ? ['back: back'] : []),
  ];
}

/** What can have been met once this step has cut, in the order of the machine kind. */
export function metByCut({ job, cutShows }: RunState, id: string): readonly string[] {
  const step = job.flow.steps.get(id);
  const named = step?.kind === 'cut' || step?.kind === 'passes' ? step.troubles : [];
  const met = [...named, ...cutShows];
  return job.flow.kind.walks.map((walk) => walk.id).filter((walk) => met.includes(walk));
}

/** What a move leaves of that: a cut adds to it, and nothing else does. */
export function metAfter(before: RunState, { snapshot }: RunState): readonly string[] {
  const { step, phase } = positionOf(snapshot);
  return phase === 'cutting' ? metByCut(before, step) : before.cutShows;
}

const troubleFrom: ReadonlySet<string> = new Set(['gate', 'dial', 'start', 'cutting']);

function troublesAt({ job, snapshot, cutShows }: RunState): readonly string[] {
  const { step: id, phase } = positionOf(snapshot);
  const step = job.flow.steps.get(id);
  if (!troubleFrom.has(phase) || (step?.kind !== 'cut' && step?.kind !== 'passes')) return [];
  return job.flow.kind.walks
    .filter((walk) => walk.everywhere || step.troubles.includes(walk.id))
    .filter((walk) => walk.everywhere || cutShows.includes(walk.id))
    .map(({ id: walk, word }) => `trouble:${walk}: ${word}`);
}

/** True where a size may be said. */
export function numberAt({ job, snapshot }: RunState): boolean {
  const { step: id, phase, walk } = positionOf(snapshot);
  const kind = job.flow.steps.get(id)?.kind;
  if (walk) return itemOf(job, walk)?.advice !== undefined;
  if (kind === 'passes') return phase === 'measure';
  return phase === 'open' && (kind === 'measure' || kind === 'inspect');
}
