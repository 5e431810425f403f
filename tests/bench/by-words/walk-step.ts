/** Walks one step's chart by words: every simple path of a chart that is new, and of one like it every arrow. */

import type { RunState } from '../../../src/bench/index.ts';
import { type Job, unknownState } from '../../../src/flow/index.ts';
import { countPaths, isWhole } from './count-paths.ts';
import type { StepCoverage } from './coverage.ts';
import { brokenRules } from './never.ts';
import { placeIn, take } from './scripted-person.ts';
import { arrowsOf, type ChartArrow, namesOfPaths } from './step-chart.ts';

interface Played {
  readonly state: RunState | undefined;
  readonly taken: readonly string[];
  readonly broken: readonly string[];
}

/** Plays paths from one state. Paths that begin alike share what was played of them. */
export function player(from: RunState, step: string, arrows: readonly ChartArrow[]) {
  const byName = new Map(arrows.map((arrow) => [arrow.name, arrow]));
  const known = new Map<string, Played>([['', { state: from, taken: [], broken: [] }]]);
  const play = (names: readonly string[]): Played => {
    const key = names.join(' | ');
    const old = known.get(key);
    if (old) return old;
    const before = play(names.slice(0, -1));
    const last = names.at(-1) ?? '';
    const played = onward(before, byName.get(last));
    known.set(key, played);
    return played;
  };
  const onward = (before: Played, arrow: ChartArrow | undefined): Played => {
    if (!before.state || !arrow) return { ...before, state: undefined };
    const broken = [...before.broken];
    const state = take(before.state, step, arrow, (seen, word) => {
      for (const rule of brokenRules(seen)) broken.push(`after "${word}": ${rule}`);
    });
    return { state, taken: state ? [...before.taken, arrow.name] : before.taken, broken };
  };
  return play;
}

export interface WalkedStep extends StepCoverage {
  readonly broken: readonly string[];
}

/** Charts that were walked whole, so that steps like them need not be again. */
export type WalkedShapes = Set<string>;

/** Ways from one state that are all played; of more, a shortest one to each state. */
const mostForAll = 1_000;

/**
 * The step entered as in a run, and entered with nothing known. From both: every simple path, then every arrow that
 * closes a circle, behind the paths that lead to where it begins. From where there are too many paths, and in a chart
 * that is like one that was walked, a shortest path to each of its states is walked, and then every arrow.
 */
export function walkStep(entered: RunState, step: string, shapes: WalkedShapes): WalkedStep {
  const arrows = arrowsOf(entered.job, step);
  const shape = shapeOf(entered.job, step, arrows);
  const fresh = !shapes.has(shape);
  shapes.add(shape);
  const entries = [entered, ...nothingKnown(entered, step, arrows)];
  const walks = entries.map((from) => walkFrom(from, step, arrows, fresh));
  const all = walks.flatMap(({ played, closed }) => [...played, ...closed]);
  const pairs = all.flatMap(({ taken }) =>
    taken.slice(1).map((name, index) => `${taken[index]} | ${name}`),
  );
  const [first = ''] = walks.map((walk) => walk.first).slice(-1);
  const whole = walks.flatMap((walk) =>
    walk.first === first ? walk.whole.map(({ names }) => names) : [],
  );
  const ways = whole.filter((names) => isWhole(names, arrows, first));
  return {
    step,
    like: !fresh,
    states: new Set(arrows.map(({ from }) => from)).size,
    arrows,
    taken: new Set(all.flatMap(({ taken }) => taken)),
    pairs: new Set(pairs).size,
    ofPairs: arrows.flatMap((one) => arrows.filter(({ from }) => from === one.to)).length,
    paths: countPaths(first, arrows),
    whole: new Set(ways.map((names) => names.join(' | '))).size,
    broken: all.flatMap(({ broken }) => broken),
  };
}

/** All that a step's chart is made of but for names: its arrows, what it asks for, and how many ways lead out. */
function shapeOf(job: Job, step: string, arrows: readonly ChartArrow[]): string {
  const plan = job.plans.get(step);
  const outs = [...new Set(arrows.map(({ to }) => to))].filter((to) => to.startsWith('out:'));
  const told = (name: string) =>
    outs.reduce((text, out, at) => text.replace(out, `out:${at}`), name);
  const { kind } = plan?.step ?? {};
  return JSON.stringify([kind, plan?.gate, plan?.hands, arrows.map(({ name }) => told(name))]);
}

function walkFrom(from: RunState, step: string, arrows: readonly ChartArrow[], fresh: boolean) {
  const first = placeIn(from, step);
  const play = player(from, step, arrows);
  const paths = namesOfPaths(first, arrows, fresh && countPaths(first, arrows) <= mostForAll);
  const played = paths.map((names) => ({ names, ...play(names) }));
  const ends = new Map(arrows.map(({ name, to }) => [name, to]));
  const whole = played.filter(({ names, taken }) => taken.length === names.length);
  const closed: (Played & { readonly names: readonly string[] })[] = [];
  // Twice: some arrows begin where only a closing arrow of the first round leads.
  for (let round = 0; round < 2; round += 1) {
    const tried = [...played, ...closed];
    const seen = new Set(tried.flatMap(({ taken }) => taken));
    const known = tried.filter(({ names, taken }) => taken.length === names.length);
    for (const arrow of arrows.filter(({ name }) => !seen.has(name))) {
      for (const names of behind(arrow, known, ends, first)) closed.push({ names, ...play(names) });
    }
  }
  return { first, played, whole, closed };
}

/** A hold goes on to the gauge only when it was begun there. */
function goesBack({ event, to }: ChartArrow, way: readonly string[]): boolean {
  return event !== 'carry-on' || to !== 'measure' || (way.at(-1)?.startsWith('measure ') ?? false);
}

const waysTried = 12;

/** A few of the ways to where the arrow begins, with the arrow after them. The tool leaves out paths that begin longer ones. */
function behind(
  arrow: ChartArrow,
  whole: readonly { readonly names: readonly string[] }[],
  ends: ReadonlyMap<string, string>,
  first: string,
): readonly (readonly string[])[] {
  const ways = new Map<string, readonly string[]>();
  for (const { names } of whole) {
    for (let length = 0; length <= names.length; length++) {
      const end = length === 0 ? first : ends.get(names[length - 1] ?? '');
      if (end !== arrow.from) continue;
      const way = names.slice(0, length);
      if (goesBack(arrow, way)) ways.set(way.join(' | '), [...way, arrow.name]);
      if (ways.size >= waysTried) return [...ways.values()];
    }
  }
  return [...ways.values()];
}

/** A step with a gate, entered as after a break: every fact has to be answered. */
function nothingKnown(
  state: RunState,
  step: string,
  arrows: readonly ChartArrow[],
): readonly RunState[] {
  if (!arrows.some(({ from }) => from === 'gate')) return [];
  const { context } = state.snapshot;
  const facts = Object.fromEntries(Object.keys(context.facts).map((fact) => [fact, unknownState]));
  const snapshot = state.job.machine.resolveState({
    value: { [step]: 'gate' },
    context: { ...context, facts, speedSet: null },
  });
  return [{ ...state, snapshot, undo: null }];
}
