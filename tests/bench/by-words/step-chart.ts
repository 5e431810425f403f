/** The chart of one step, read off the compiled machine: its states and every arrow between them. */

import { createTestModel } from '@xstate/test';
import { createMachine } from 'xstate';
import { type FlowSnapshot, type Job, positionOf } from '../../../src/flow/index.ts';
import type { SmallMove, StateNode, Transition } from '../../model/moves.ts';

/** One arrow of the chart as compiled. */
export interface ChartArrow {
  /** Unique within its step: "gate fact#0 → gate", or "gate fact#0 stays" where it has no target. */
  readonly name: string;
  readonly from: string;
  readonly event: string;
  readonly guard: string;
  readonly params: Readonly<Record<string, unknown>>;
  /** A state of the step, or "out:STEP" for a way out of it. */
  readonly to: string;
}

export interface StepChart {
  readonly step: string;
  /** The state that is come to first. */
  readonly first: string;
  readonly states: readonly string[];
  /** Arrows with a target, in the states of the step and those that they inherit. */
  readonly arrows: readonly ChartArrow[];
  /** Arrows that only change what is believed. */
  readonly stays: readonly ChartArrow[];
  /** The arrow that a small step of the chart was; none for one of another step. */
  named(move: SmallMove): ChartArrow | undefined;
}

/** Numbers that change in a run are no word of the chart: the proof walks them by themselves (prove-inputs). */
const besides = 'adjusted';

export function stepChart(job: Job, step: string): StepChart {
  const node = job.machine.root.states[step];
  if (!node) throw new Error(`The machine has no step "${step}".`);
  const leaves = leavesOf(node);
  const byTransition = new Map<Transition, Map<string, ChartArrow>>();
  const all = leaves.flatMap((leaf) =>
    arrowsFrom(leaf, node).map(([transition, arrow]) => {
      const named = byTransition.get(transition) ?? new Map<string, ChartArrow>();
      byTransition.set(transition, named.set(arrow.from, arrow));
      return { arrow, stays: !transition.target?.[0] };
    }),
  );
  const of = (stays: boolean) => all.flatMap((one) => (one.stays === stays ? [one.arrow] : []));
  return {
    step,
    first: nameIn(entered(node), node),
    states: leaves.map((leaf) => nameIn(leaf, node)),
    arrows: of(false),
    stays: of(true),
    named: ({ from, transition }) => byTransition.get(transition)?.get(placeIn(from, step)),
  };
}

/** Every arrow with a target. */
export function arrowsOf(job: Job, step: string): readonly ChartArrow[] {
  return stepChart(job, step).arrows;
}

/** Where a snapshot stands within a step: "gate", "will-not-start.levers", or "out:STEP". */
export function placeIn(snapshot: FlowSnapshot, step: string): string {
  const at = positionOf(snapshot);
  if (at.step !== step) return `out:${at.step}`;
  return at.walk ? `${at.walk.id}.${at.walk.item}` : at.phase;
}

function leavesOf(node: StateNode): readonly StateNode[] {
  const inner = Object.values(node.states);
  return inner.length === 0 ? [node] : inner.flatMap(leavesOf);
}

function arrowsFrom(
  leaf: StateNode,
  step: StateNode,
): readonly (readonly [Transition, ChartArrow])[] {
  const heard = new Map<string, Transition[]>();
  for (let at: StateNode | undefined = leaf; at && at !== step.parent; at = at.parent) {
    for (const [event, transitions] of at.transitions) {
      if (event === '' || event === besides) continue;
      heard.set(event, [...(heard.get(event) ?? []), ...transitions]);
    }
  }
  const from = nameIn(leaf, step);
  return [...heard, ['always', leaf.always ?? []] as const].flatMap(([event, transitions]) =>
    transitions.map((transition, index) => {
      const target = transition.target?.[0];
      const to = target ? nameIn(entered(target), step) : from;
      const name = `${from} ${event}#${index} ${target ? `→ ${to}` : 'stays'}`;
      return [transition, { name, from, event, ...guardOf(transition), to }] as const;
    }),
  );
}

function guardOf({ guard }: Transition): Pick<ChartArrow, 'guard' | 'params'> {
  if (typeof guard === 'string') return { guard, params: {} };
  const { type, params } = (guard ?? {}) as { type?: unknown; params?: ChartArrow['params'] };
  return { guard: String(type ?? ''), params: params ?? {} };
}

/** The state that is come to when a compound one is the target. */
function entered(node: StateNode): StateNode {
  const first = node.initial?.target[0];
  return first && first !== node ? entered(first) : node;
}

function nameIn(node: StateNode, step: StateNode): string {
  const inside = node.path[0] === step.key;
  return inside ? node.path.slice(1).join('.') : `out:${node.path[0]}`;
}

/** The chart as a machine without guards or context, for the model-based tool to walk. */
function pathsThrough(first: string, arrows: readonly ChartArrow[], all: boolean) {
  const names = new Set([first, ...arrows.flatMap(({ from, to }) => [from, to])]);
  const states = Object.fromEntries(
    [...names].map((name) => [
      keyOf(name),
      {
        on: Object.fromEntries(
          arrows
            .filter(({ from, to }) => from === name && to !== name)
            .map((arrow) => [arrow.name, keyOf(arrow.to)]),
        ),
      },
    ]),
  );
  const machine = createMachine({ id: 'step', initial: keyOf(first), states });
  const model = createTestModel(machine);
  const options = { serializeState: (state: { value: unknown }) => JSON.stringify(state.value) };
  return all ? model.getSimplePaths(options) : model.getShortestPaths(options);
}

/** Dots and colons mean something in the addresses of a machine. */
function keyOf(name: string): string {
  return name.replaceAll('.', '/').replaceAll(':', '>');
}

/** Every simple path of the chart from one of its states, or only a shortest one to each, as names of arrows. */
export function namesOfPaths(
  first: string,
  arrows: readonly ChartArrow[],
  all = true,
): readonly (readonly string[])[] {
  // A hold goes on to the gauge only where it was begun there: as a short cut it cannot be taken.
  const cut = arrows.filter(({ event, to }) => all || event !== 'carry-on' || to !== 'measure');
  return pathsThrough(first, cut, all).map((path) =>
    path.steps.map((one) => String(one.event.type)).filter((type) => type !== 'xstate.init'),
  );
}
