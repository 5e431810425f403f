/**
 * Model-based tests of every shipped flow: each step's own chart is walked along every simple path
 * by the model-based tool, and each path is played through the real job by a scripted person.
 * The product over all steps is astronomically large; steps are joined by the walk from one to the next.
 */

import { describe, expect, test } from 'vitest';
import type { RunState } from '../../../src/bench/index.ts';
import { endStep, type Job, unknownState } from '../../../src/flow/index.ts';
import { begun } from '../scripted.ts';
import { coverageTable, type StepCoverage } from './coverage.ts';
import { brokenRules } from './never.ts';
import { placeIn, take } from './scripted-person.ts';
import { arrowsOf, type ChartArrow, pathsThrough } from './step-chart.ts';

/** A run that stands at the entry of each step that can be come to. */
function entries(): ReadonlyMap<string, RunState> {
  const first = begun().state;
  const found = new Map<string, RunState>();
  const open: RunState[] = [first];
  for (let state = open.pop(); state; state = open.pop()) {
    const step = stepOf(state);
    if (step === endStep || found.has(step)) continue;
    found.set(step, state);
    open.push(...leave(state, step));
  }
  return found;
}

function stepOf(state: RunState): string {
  return placeIn(state, '').slice('out:'.length);
}

const roundabout: ReadonlySet<string> = new Set(['hold', 'stop', 'interrupted', 'back', 'trouble']);

/** The run after the step, once for each way out of it. */
function leave(state: RunState, step: string): readonly RunState[] {
  const arrows = arrowsOf(state.job, step);
  const straight = arrows.filter(({ event, to }) => !roundabout.has(event) && to !== 'hold');
  return namesOfPaths(state, step, straight)
    .filter((names) => names.at(-1)?.includes('→ out:'))
    .flatMap((names) => player(state, step, arrows)(names).state ?? []);
}

function namesOfPaths(
  state: RunState,
  step: string,
  arrows: readonly ChartArrow[],
): readonly (readonly string[])[] {
  return pathsThrough(placeIn(state, step), arrows).map((path) =>
    path.steps.map((one) => String(one.event.type)).filter((type) => type !== 'xstate.init'),
  );
}

interface Played {
  readonly state: RunState | undefined;
  readonly taken: readonly string[];
  readonly broken: readonly string[];
}

/** Plays paths from one state. Paths that begin alike share what was played of them. */
function player(from: RunState, step: string, arrows: readonly ChartArrow[]) {
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

interface WalkedStep extends StepCoverage {
  readonly broken: readonly string[];
}

/**
 * The step entered as in a run, and entered with nothing known. From both: every simple path, then
 * every arrow that closes a circle, behind the paths that lead to where it begins.
 */
function walkStep(entered: RunState, step: string): WalkedStep {
  const arrows = arrowsOf(entered.job, step);
  const walks = [entered, ...nothingKnown(entered, step, arrows)].map((from) =>
    walkFrom(from, step, arrows),
  );
  const all = walks.flatMap(({ played, closed }) => [...played, ...closed]);
  const pairs = all.flatMap(({ taken }) =>
    taken.slice(1).map((name, index) => `${taken[index]} | ${name}`),
  );
  return {
    step,
    states: new Set(arrows.map(({ from }) => from)).size,
    arrows,
    taken: new Set(all.flatMap(({ taken }) => taken)),
    pairs: new Set(pairs).size,
    paths: walks.reduce((sum, { played }) => sum + played.length, 0),
    whole: walks.reduce((sum, { whole }) => sum + whole.length, 0),
    broken: all.flatMap(({ broken }) => broken),
  };
}

function walkFrom(from: RunState, step: string, arrows: readonly ChartArrow[]) {
  const first = placeIn(from, step);
  const play = player(from, step, arrows);
  const played = namesOfPaths(from, step, arrows).map((names) => ({ names, ...play(names) }));
  const whole = played.filter(({ names, taken }) => taken.length === names.length);
  const seen = new Set(played.flatMap(({ taken }) => taken));
  const closed = arrows
    .filter((arrow) => !seen.has(arrow.name))
    .flatMap((arrow) => behind(arrow, whole, arrows, first).map(play));
  return { played, whole, closed };
}

const waysTried = 12;

/** A few of the ways to where the arrow begins, with the arrow after them. The tool leaves out paths that begin longer ones. */
function behind(
  arrow: ChartArrow,
  whole: readonly { readonly names: readonly string[] }[],
  arrows: readonly ChartArrow[],
  first: string,
): readonly (readonly string[])[] {
  const ways = new Map<string, readonly string[]>();
  for (const { names } of whole) {
    for (let length = 0; length <= names.length && ways.size < waysTried; length++) {
      const way = names.slice(0, length);
      if (endOf(way, arrows, first) === arrow.from) ways.set(way.join(' | '), [...way, arrow.name]);
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

function endOf(names: readonly string[], arrows: readonly ChartArrow[], first: string): string {
  return arrows.find((arrow) => arrow.name === names.at(-1))?.to ?? first;
}

describe('the hinge pin, by the model', () => {
  const at = entries();
  const steps = [...at].map(([step, state]) => walkStep(state, step));

  test('every step of the file is come to', () => {
    const { job } = begun().state;
    expect([...at.keys()].sort()).toEqual([...job.flow.steps.keys()].sort());
  });

  test('no never-rule is broken on any path, and every state has its words', () => {
    expect(steps.flatMap(({ step, broken }) => broken.map((one) => `${step}: ${one}`))).toEqual([]);
  });

  test('every transition is taken, but those that nothing can bring about', () => {
    const { job } = begun().state;
    const missed = steps.flatMap(({ step, arrows, taken }) =>
      arrows
        .filter((arrow) => !taken.has(arrow.name) && !isHeldInstead(job, step, arrow))
        .map((arrow) => `${step}: ${arrow.name} (${arrow.guard})`),
    );
    expect(missed).toEqual([]);
  });

  test('prints what was covered', () => {
    const table = coverageTable('gate-hinge-pin', steps);
    console.info(table);
    expect(table).toContain('paths');
  });
});

/**
 * A step whose gate asks only that the power is off cannot fall back to that gate: power that comes
 * on is a hold before it is a gate.
 */
function isHeldInstead(job: Job, step: string, { from, guard, to }: ChartArrow): boolean {
  const gate = Object.keys(job.plans.get(step)?.gate ?? {});
  const { power } = job.flow.kind.roles;
  const onlyPower = gate.length === 1 && gate[0] === power.fact;
  return onlyPower && from === 'open' && guard === 'notMet' && to === 'gate';
}
