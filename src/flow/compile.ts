/** Compiles a flow into one XState machine: a step is a compound state, a gate is a guard, facts and readings are context. */

import type { Card } from './card.ts';
import { chartSetup } from './chart-actions.ts';
import { stepNode } from './chart-nodes.ts';
import type { ChartWorld } from './chart-world.ts';
import { dialOf } from './dial-of.ts';
import type { FlowContext } from './events.ts';
import { unknownFacts } from './facts.ts';
import { type JobInputs, type Numbers, type Running, workOut } from './numbers.ts';
import { withOwnMaterials } from './own-materials.ts';
import type { Flow } from './resolve.ts';
import { endStep } from './step-graph.ts';
import { planSteps, type StepPlan } from './step-plan.ts';

/** A flow with its machine card and numbers, ready to run or to be proved. */
export interface Job {
  readonly flow: Flow;
  readonly card: Card;
  readonly numbers: Numbers;
  readonly plans: ReadonlyMap<string, StepPlan>;
  readonly world: ChartWorld;
  readonly machine: FlowMachine;
}

export type FlowMachine = ReturnType<typeof buildMachine>;

export type JobResult =
  | { readonly ok: true; readonly job: Job }
  | { readonly ok: false; readonly faults: readonly string[] };

/** Works the numbers out and builds the chart; refuses when a rule refuses one of them. */
export function compileJob(
  plain: Flow,
  card: Card,
  inputs: JobInputs = {},
  running: Running = {},
): JobResult {
  const flow = withOwnMaterials(plain, card);
  const worked = workOut(flow, card, inputs, running);
  if (!worked.ok) return worked;
  const { numbers } = worked;
  const plans = planSteps(flow);
  const world: ChartWorld = { kind: flow.kind, plans, numbers, card: dialOf(card) };
  const machine = buildMachine(flow, world);
  return { ok: true, job: { flow, card, numbers, plans, world, machine } };
}

function buildMachine(flow: Flow, world: ChartWorld) {
  const chart = chartSetup(world);
  const context: FlowContext = {
    facts: unknownFacts(flow.kind),
    readings: {},
    passes: {},
    speedSet: null,
    held: null,
  };
  const steps = [...world.plans.values()].map((plan) => [plan.step.id, stepNode(plan, world)]);
  return chart.createMachine({
    id: 'flow',
    // A step that is done as soon as it is begun, and leads to itself, would go round for ever: the prover reports it.
    options: { maxIterations: 100 },
    initial: flow.file.steps[0]?.id ?? endStep,
    context,
    states: { ...Object.fromEntries(steps), [endStep]: { type: 'final', tags: ['end'] } },
  });
}
