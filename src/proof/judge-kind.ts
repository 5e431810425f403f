/**
 * What the claims say of a machine kind as it is written: whether what a hazard looks at can be reported, and whether a
 * fault walk asks for what hands change in it. These need no walk, and so have no path.
 */

import { type Condition, commandPhrases, type Job, type WalkItem } from '../flow/index.ts';
import type { BrokenStep } from './judge-graph.ts';
import { tell } from './tell.ts';

/** What is wrong with the kind, at the first step where it counts. */
export function judgeKind(job: Job): readonly BrokenStep[] {
  const powered = [...job.plans.values()].find((plan) => plan.powered);
  const [first] = job.plans.keys();
  const step = powered?.step.id ?? first;
  return step === undefined ? [] : [...judgeReports(job, step), ...judgeWalks(job, step)];
}

/** A fact that a hazard looks at, with the states of it that do no harm. */
interface Watched {
  readonly fact: string;
  readonly good: ReadonlySet<string>;
}

/**
 * Whatever a hazard looks at can be reported as lost at any moment, asked or not. Not so the speed, which only hands
 * change while it stands still; what hands undo is asked for anew before each start, so it must be heard only while it
 * turns; and what must run for the tool to cut is no loss when it stands.
 */
function judgeReports(job: Job, step: string): readonly BrokenStep[] {
  const { facts, hazards, roles } = job.flow.kind;
  const broken = new Map<string, BrokenStep>();
  for (const { never } of hazards) {
    const moments = new Set(momentsIn(never));
    const turns = moments.has('turning') || moments.has('cutting');
    for (const { fact: id, good } of watchedIn(never)) {
      const fact = facts.find((one) => one.id === id);
      const runs = id === roles.power.fact && good.has(roles.power.on);
      if (!fact || id === roles.speed.fact || runs || (fact.handsForget && !turns)) continue;
      if (fact.states.some((state) => state.loss && !good.has(state.id))) continue;
      const wanted = fact.states.find((state) => good.has(state.id))?.word ?? id;
      const message = tell(
        job,
      )`It must be so that "${wanted}", and nobody can report it when that is lost.`;
      broken.set(id, { claim: 'FORMAT-REPORT', step, message });
    }
  }
  return [...broken.values()];
}

function momentsIn(condition: Condition): readonly string[] {
  if ('all' in condition) return condition.all.flatMap(momentsIn);
  if ('any' in condition) return condition.any.flatMap(momentsIn);
  return 'moment' in condition ? [condition.moment] : [];
}

/** "Neither back nor locked" is one fact with two good states. */
function watchedIn(condition: Condition): readonly Watched[] {
  const good = new Map<string, Set<string>>();
  const look = (one: Condition): void => {
    if ('all' in one) one.all.forEach(look);
    else if ('any' in one) one.any.forEach(look);
    else if ('not' in one) good.set(one.fact, (good.get(one.fact) ?? new Set()).add(one.not));
  };
  look(condition);
  return [...good].map(([fact, states]) => ({ fact, good: states }));
}

/**
 * An item that only tells something says how to go on; one that does not has hands change something, and must ask for it.
 * Two items that ask for one fact have hands do the same: what the one asks for besides, the other must ask for as well.
 */
function judgeWalks(job: Job, first: string): readonly BrokenStep[] {
  const { kind, language } = job.flow;
  const next = commandPhrases(language, 'next');
  const all = kind.walks.flatMap(({ items }) => items);
  return kind.walks.flatMap((walk) => {
    const hung = [...job.plans.values()].find(({ walks }) => walks.includes(walk.id));
    return walk.items.flatMap((item) => {
      const mute = asksNothing(item) && !tells(item.say, next);
      const missing = mute ? tell(job)`anything` : missingIn(item, all, job);
      if (missing === undefined) return [];
      const message = tell(
        job,
      )`"${walk.title}" tells "${item.say}", and does not ask for ${missing} afterwards.`;
      return [{ claim: 'FORMAT-WALK', step: hung?.step.id ?? first, message }];
    });
  });
}

/** The word for what a like item asks for and this one does not. */
function missingIn(item: WalkItem, all: readonly WalkItem[], job: Job): string | undefined {
  const like = all.filter(({ needs }) => Object.keys(needs).some((fact) => fact in item.needs));
  const asked = like.flatMap(({ needs }) => Object.entries(needs));
  const [fact, state] = asked.find(([one]) => !(one in item.needs)) ?? [];
  if (fact === undefined) return undefined;
  const states = job.flow.kind.facts.find(({ id }) => id === fact)?.states ?? [];
  return tell(job)`"${states.find(({ id }) => id === state)?.word ?? fact}"`;
}

function asksNothing({ needs, offer, advice }: WalkItem): boolean {
  return Object.keys(needs).length === 0 && !offer && !advice;
}

function tells(say: string, phrases: readonly string[]): boolean {
  const words = ` ${say.toLowerCase().replaceAll(/[^\p{L}]+/gu, ' ')} `;
  return phrases.some((phrase) => words.includes(` ${phrase} `));
}
