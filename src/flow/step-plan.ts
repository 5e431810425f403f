/** What the statechart needs to know of each step, worked out once before it is built. */

import { withoutKeys } from './facts.ts';
import type { Step } from './flow-shape.ts';
import type { Flow } from './resolve.ts';
import { readingOf } from './scope.ts';
import { stepsBetween, targetsOf } from './step-graph.ts';
import type { WantedFacts } from './words-shape.ts';

export interface BackPlan {
  readonly to: string;
  /** What the steps between have claimed, and which nobody can vouch for after going back. */
  readonly facts: readonly string[];
  readonly readings: readonly string[];
  readonly passes: readonly string[];
}

export interface StepPlan {
  readonly step: Step;
  readonly targets: readonly string[];
  /** Met before the step opens. For a powered step, the speed is among them. */
  readonly gate: WantedFacts;
  /** Kept met while the tool cuts: the gate without the tool's place, and the power on. */
  readonly cutting: WantedFacts;
  readonly powered: boolean;
  readonly hands: boolean;
  /** Fault walks that can be begun here. */
  readonly walks: readonly string[];
  readonly back: BackPlan | undefined;
}

export function planSteps(flow: Flow): ReadonlyMap<string, StepPlan> {
  const plans = new Map<string, StepPlan>();
  flow.file.steps.forEach((step, index) => {
    plans.set(step.id, planStep(step, targetsOf(flow.file.steps, index), flow));
  });
  return plans;
}

function planStep(step: Step, targets: readonly string[], flow: Flow): StepPlan {
  const { speed, tool, power } = flow.kind.roles;
  const needs = flow.needs.get(step.id) ?? {};
  const powered = step.kind === 'cut' || step.kind === 'passes';
  const gate = powered ? { ...needs, [speed.fact]: speed.set } : needs;
  return {
    step,
    targets,
    gate,
    cutting: { ...withoutKeys(gate, [tool.fact]), [power.fact]: power.on },
    powered,
    hands: step.hands || step.kind === 'measure' || step.kind === 'inspect',
    walks: walksOf(step, flow),
    back: backPlan(step, flow),
  };
}

function walksOf(step: Step, { kind }: Flow): readonly string[] {
  if (step.kind !== 'cut' && step.kind !== 'passes') return [];
  return kind.walks
    .filter((walk) => walk.everywhere || step.troubles.includes(walk.id))
    .map((walk) => walk.id);
}

function backPlan(step: Step, flow: Flow): BackPlan | undefined {
  const to = flow.graph.dominator.get(step.id);
  if (to === undefined) return undefined;
  const undone = [...stepsBetween(flow.graph, to, step.id), step.id]
    .map((id) => flow.steps.get(id))
    .filter((one) => one !== undefined);
  return {
    to,
    facts: [...new Set(undone.flatMap((one) => factsTouched(one, flow)))],
    readings: undone.flatMap((one) => readingOf(one)?.id ?? []),
    passes: undone.filter((one) => one.kind === 'passes').map((one) => one.id),
  };
}

/** Facts that a step asks for or changes by itself. */
function factsTouched(step: Step, flow: Flow): readonly string[] {
  const { tool, power, speed } = flow.kind.roles;
  if (step.kind === 'check') return Object.keys(step.facts);
  if (step.kind === 'do') return [...Object.keys(step.begins), ...Object.keys(step.ends)];
  if (step.kind === 'cut' || step.kind === 'passes') return [tool.fact, speed.fact, power.fact];
  return [];
}
