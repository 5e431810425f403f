/** The chart of one step as XState compiled it: its states and every arrow, so that what was walked can be counted. */

import type { Job } from '../flow/index.ts';

/** What leads from one state of a step to another; arrows that differ only in their guard are one. */
export interface ChartArrow {
  /** "gate fact → start", unique in its step. */
  readonly name: string;
  readonly from: string;
  /** Empty for what follows by itself. */
  readonly event: string;
  /** A state of the step, the same where it stays, or "out:STEP". */
  readonly to: string;
}

export interface StepChart {
  /** The state that is come to first. */
  readonly first: string;
  /** As a snapshot names them: JSON of the value inside the step. */
  readonly states: readonly string[];
  readonly arrows: readonly ChartArrow[];
}

type StateNode = Job['machine']['root'];
type Transition = StateNode['always'] extends readonly (infer T)[] | undefined ? T : never;

/** Numbers that change in a run are no word of the chart: they are walked by themselves (prove-inputs). */
const besides = 'adjusted';

export function stepChartOf(job: Job, step: string): StepChart {
  const node = job.machine.root.states[step];
  if (!node) throw new Error(`The chart has no step "${step}".`);
  const leaves = leavesOf(node);
  const arrows = new Map<string, ChartArrow>();
  for (const leaf of leaves) for (const one of arrowsFrom(leaf, node)) arrows.set(one.name, one);
  return {
    first: innerOf(entered(node), node),
    states: leaves.map((leaf) => innerOf(leaf, node)),
    arrows: [...arrows.values()],
  };
}

function leavesOf(node: StateNode): readonly StateNode[] {
  const inner = Object.values(node.states);
  return inner.length === 0 ? [node] : inner.flatMap(leavesOf);
}

function arrowsFrom(leaf: StateNode, step: StateNode): readonly ChartArrow[] {
  const from = innerOf(leaf, step);
  const heard: (readonly [event: string, Transition])[] = [];
  for (let at: StateNode | undefined = leaf; at && at !== step.parent; at = at.parent) {
    for (const [event, transitions] of at.transitions) {
      if (event !== '' && event !== besides) {
        for (const one of transitions) heard.push([event, one]);
      }
    }
  }
  for (const one of leaf.always ?? []) heard.push(['', one]);
  return heard.map(([event, { target }]) => {
    const end = target?.[0];
    const to = end ? innerOf(entered(end), step) : from;
    return { name: arrowName(from, event, to), from, event, to };
  });
}

export function arrowName(from: string, event: string, to: string): string {
  return `${from} ${event === '' ? '(by itself)' : event} → ${to}`;
}

/** The state that is come to when a compound one is the target. */
function entered(node: StateNode): StateNode {
  const first = node.initial?.target[0];
  return first && first !== node ? entered(first) : node;
}

/** "gate" as `"gate"`, and an item of a walk as `{"chatter":"slides"}`: what a snapshot's value holds for the step. */
function innerOf(node: StateNode, step: StateNode): string {
  const [own, ...path] = node.path;
  if (own !== step.key) return `out:${own}`;
  return JSON.stringify(
    path.reduceRight<unknown>(
      (value, key) => (value === undefined ? key : { [key]: value }),
      undefined,
    ),
  );
}

/** Ways from the first state on which no state comes twice, beginnings of longer ones too; one more than `most` of more. */
export function countPaths({ first, states, arrows }: StepChart, most: number): number {
  const after = new Map(
    states.map((state) => [state, arrows.filter(({ from }) => from === state)]),
  );
  let count = 0;
  const seen = new Set([first]);
  const go = (state: string): void => {
    for (const { to } of after.get(state) ?? []) {
      if (seen.has(to) || count > most) continue;
      count += 1;
      if (!after.has(to)) continue;
      seen.add(to);
      go(to);
      seen.delete(to);
    }
  };
  go(first);
  return count;
}
