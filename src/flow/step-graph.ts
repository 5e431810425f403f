/** Which step can follow which, and which step every path to another goes through. */

import type { Step } from './flow-shape.ts';

/** The place after the last step. It is no step: nothing can be called "end". */
export const endStep = 'end';

/** Where a step can lead, in the order in which the file names it. */
export function targetsOf(steps: readonly Step[], index: number): readonly string[] {
  const step = steps[index];
  if (step === undefined) return [];
  const following = steps[index + 1]?.id ?? endStep;
  switch (step.kind) {
    case 'choose':
      return step.options.map((option) => option.next);
    case 'inspect':
      return [step.within ?? following, step.rework, step.lost];
    case 'passes':
      return [step.next ?? following, step.lost];
    default:
      return [step.next ?? following];
  }
}

type Arrows = ReadonlyMap<string, readonly string[]>;

export interface StepGraph {
  readonly targets: Arrows;
  readonly sources: Arrows;
  /** Steps that can be reached from the first one, in breadth-first order. */
  readonly reachable: readonly string[];
  /** The last step that every path to this one goes through; none for the first. */
  readonly dominator: ReadonlyMap<string, string>;
}

export function stepGraph(steps: readonly Step[]): StepGraph {
  const targets = new Map(steps.map((step, index) => [step.id, targetsOf(steps, index)]));
  const first = steps[0]?.id;
  const reachable = first === undefined ? [] : reachedFrom(first, targets);
  const sources = reversed(targets);
  return { targets, sources, reachable, dominator: dominators(reachable, targets, sources) };
}

/** True when every path from the first step to `step` goes through `through` first. */
export function alwaysAfter(graph: StepGraph, step: string, through: string): boolean {
  let at = graph.dominator.get(step);
  while (at !== undefined) {
    if (at === through) return true;
    at = graph.dominator.get(at);
  }
  return false;
}

/** Steps on some path that leaves `from` and comes to `to`, with `from` and without `to`. */
export function stepsBetween(graph: StepGraph, from: string, to: string): readonly string[] {
  const after = reachedFrom(from, graph.targets, to);
  const before = new Set(reachedFrom(to, graph.sources, from));
  return after.filter((id) => id !== to && (id === from || before.has(id)));
}

/** Everything reached from `first`, without going on from `stop`. */
function reachedFrom(first: string, arrows: Arrows, stop?: string): readonly string[] {
  const seen = new Set([first]);
  for (const id of seen) {
    if (id === stop) continue;
    for (const end of arrows.get(id) ?? []) seen.add(end);
  }
  return [...seen].filter((id) => arrows.has(id));
}

function reversed(targets: Arrows): Arrows {
  const back = new Map<string, string[]>([...targets.keys()].map((id) => [id, []]));
  for (const [id, ends] of targets) for (const end of ends) back.get(end)?.push(id);
  return back;
}

/** Cooper, Harvey and Kennedy, "A Simple, Fast Dominance Algorithm" (2001). */
function dominators(
  reachable: readonly string[],
  targets: Arrows,
  sources: Arrows,
): ReadonlyMap<string, string> {
  const order = reversePostorder(reachable, targets);
  const rank = new Map(order.map((id, index) => [id, index]));
  const above = new Map<string, string>();
  const first = order[0];
  if (first === undefined) return above;
  above.set(first, first);
  for (let changed = true; changed; ) {
    changed = false;
    for (const id of order.slice(1)) {
      const known = (sources.get(id) ?? []).filter((source) => above.has(source));
      const next = known.reduce<string | undefined>(
        (a, b) => (a === undefined ? b : meet(a, b, above, rank)),
        undefined,
      );
      if (next !== undefined && above.get(id) !== next) {
        above.set(id, next);
        changed = true;
      }
    }
  }
  above.delete(first);
  return above;
}

function meet(
  left: string,
  right: string,
  above: ReadonlyMap<string, string>,
  rank: ReadonlyMap<string, number>,
): string {
  let a = left;
  let b = right;
  while (a !== b) {
    if ((rank.get(a) ?? 0) > (rank.get(b) ?? 0)) a = above.get(a) ?? b;
    else b = above.get(b) ?? a;
  }
  return a;
}

/** Iterative, since a flow of a thousand steps would be a call stack a thousand deep. */
function reversePostorder(reachable: readonly string[], targets: Arrows): readonly string[] {
  const first = reachable[0];
  if (first === undefined) return [];
  const seen = new Set([first]);
  const done: string[] = [];
  const open = [{ id: first, next: 0 }];
  for (let top = open.at(-1); top !== undefined; top = open.at(-1)) {
    const end = targets.get(top.id)?.[top.next++];
    if (end === undefined) {
      done.push(top.id);
      open.pop();
    } else if (targets.has(end) && !seen.has(end)) {
      seen.add(end);
      open.push({ id: end, next: 0 });
    }
  }
  return done.reverse();
}
