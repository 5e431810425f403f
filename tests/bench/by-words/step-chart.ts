/** The chart of one step, read off the compiled machine: its states and every arrow between them. */

import { createTestModel } from '@xstate/test';
import { createMachine } from 'xstate';
import type { Job } from '../../../src/flow/index.ts';

/** One arrow of the chart as compiled. */
export interface ChartArrow {
  /** Unique within its step: "gate fact#0 → gate". */
  readonly name: string;
  readonly from: string;
  readonly event: string;
  readonly guard: string;
  /** A state of the step, or "out:STEP" for a way out of it. */
  readonly to: string;
}

type StateNode = Job['machine']['root'];
type Transition = StateNode['always'] extends readonly (infer T)[] | undefined ? T : never;

/** Every arrow that changes the state, in the states of the step and those it inherits. */
export function arrowsOf(job: Job, step: string): readonly ChartArrow[] {
  const node = job.machine.root.states[step];
  if (!node) throw new Error(`The machine has no step "${step}".`);
  return leaves(node).flatMap((leaf) => arrowsFrom(leaf, node));
}

function leaves(node: StateNode): readonly StateNode[] {
  const inner = Object.values(node.states);
  return inner.length === 0 ? [node] : inner.flatMap(leaves);
}

function arrowsFrom(leaf: StateNode, step: StateNode): readonly ChartArrow[] {
  const heard = new Map<string, Transition[]>();
  for (let at: StateNode | undefined = leaf; at && at !== step.parent; at = at.parent) {
    for (const [event, transitions] of at.transitions) {
      if (event !== '') heard.set(event, [...(heard.get(event) ?? []), ...transitions]);
    }
  }
  const always = leaf.always ?? [];
  return [...heard, ['always', always] as const].flatMap(([event, transitions]) =>
    transitions.flatMap((transition, index) => {
      const target = transition.target?.[0];
      if (!target) return [];
      const from = nameIn(leaf, step);
      const to = nameIn(entered(target), step);
      return [
        { name: `${from} ${event}#${index} → ${to}`, from, event, guard: guardOf(transition), to },
      ];
    }),
  );
}

function guardOf(transition: Transition): string {
  const { guard } = transition;
  if (typeof guard === 'string') return guard;
  return typeof guard === 'object' && guard !== null && 'type' in guard ? String(guard.type) : '';
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
