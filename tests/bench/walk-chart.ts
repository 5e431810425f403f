/** Walks a small chart whole: every state with its memory, every event in each, and every simple path by the model-based tool. */

import { createTestModel } from '@xstate/test';
import type { AnyStateMachine, AnyStateNode } from 'xstate';
import type { ChartClaim } from './chart-claims.ts';

/** One event as it is tried, with the name it is told by. */
export interface Tried<E> {
  readonly name: string;
  readonly event: E;
}

export interface WalkedChart {
  /** Claims that do not hold, with where. */
  readonly broken: readonly string[];
  readonly values: ReadonlySet<string>;
  /** Percent of the arrows that the chart is made of. */
  readonly row: Readonly<Record<'states' | 'transitions' | 'pairs' | 'paths' | 'percent', number>>;
}

interface Chart<S, E> {
  readonly machine: AnyStateMachine;
  begin(): S;
  step(state: S, event: E): S;
}

export function walkChart<S extends { value: unknown; context: unknown }, E>(
  chart: Chart<S, E>,
  events: readonly Tried<E>[],
  claims: readonly ChartClaim<S>[],
): WalkedChart {
  const keyOf = ({ value, context }: S) => JSON.stringify([value, context]);
  const broken = new Set<string>();
  const judge = (state: S, move?: { readonly before: S; readonly event: string }) => {
    for (const { id, holds } of claims) {
      if (!holds(state, move)) broken.add(`${id}: ${move?.event ?? 'at first'} → ${keyOf(state)}`);
    }
  };
  const first = chart.begin();
  judge(first);
  const found = new Map([[keyOf(first), first]]);
  const arrows = new Set(arrowsIn(chart.machine.root));
  const taken = new Set<unknown>();
  const moves = new Map<string, { readonly from: string; readonly to: string }>();
  for (const [from, state] of found) {
    for (const { name, event } of events) {
      const after = chart.step(state, event);
      judge(after, { before: state, event: name });
      for (const arrow of chart.machine.getTransitionData(state as never, event as never)) {
        taken.add(arrow);
      }
      const to = keyOf(after);
      if (to !== from) moves.set(`${from} ${name}`, { from, to });
      if (!found.has(to)) found.set(to, after);
    }
  }
  const values = new Set([...found.values()].map(({ value }) => JSON.stringify(value)));
  const played = playPaths(chart, events, judge);
  const all = [...moves.values()];
  const pairs = all.flatMap((one) => all.filter(({ from }) => from === one.to)).length;
  // Every event is tried in every state that is found: so a pair is taken where its second move begins.
  const percent = (100 * taken.size) / arrows.size;
  const row = { states: found.size, transitions: moves.size, pairs, paths: played, percent };
  return { broken: [...broken], values, row };
}

function arrowsIn(node: AnyStateNode): readonly unknown[] {
  return [...node.transitions.values()]
    .flat()
    .concat(...Object.values(node.states).map((inner) => arrowsIn(inner) as never[]));
}

/** Plays each simple path that the tool finds, and judges every state on it anew. */
function playPaths<S extends { value: unknown; context: unknown }, E>(
  chart: Chart<S, E>,
  events: readonly Tried<E>[],
  judge: (state: S, move?: { readonly before: S; readonly event: string }) => void,
): number {
  const model = createTestModel(chart.machine as unknown as Parameters<typeof createTestModel>[0]);
  const options: unknown = {
    events: events.map(({ event }) => event),
    serializeState: ({ value, context }: S) => JSON.stringify([value, context]),
  };
  const paths = model.getSimplePaths(options as Parameters<typeof model.getSimplePaths>[0]);
  for (const { steps } of paths) {
    let state = chart.begin();
    for (const { event } of steps) {
      const tried = events.find((one) => one.event === (event as unknown));
      if (!tried) continue;
      const before = state;
      state = chart.step(state, tried.event);
      judge(state, { before, event: tried.name });
    }
  }
  return paths.length;
}
