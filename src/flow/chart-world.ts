/** What the guards and actions of a chart close over, so that their parameters stay plain data. */

import type { FlowContext } from './events.ts';
import type { MachineKind } from './kind-shape.ts';
import type { Numbers } from './numbers.ts';
import type { StepPlan } from './step-plan.ts';
import type { WantedFacts } from './words-shape.ts';

export interface ChartWorld {
  readonly kind: MachineKind;
  readonly plans: ReadonlyMap<string, StepPlan>;
  readonly numbers: Numbers;
  readonly card: { readonly crossReads: 'diameter' | 'radius'; readonly crossDivision: number };
}

export type Wanted = { readonly wanted: WantedFacts };
export type OfStep = { readonly step: string };
export type Held = NonNullable<FlowContext['held']>;

export function planOf(world: ChartWorld, id: string): StepPlan {
  const plan = world.plans.get(id);
  if (!plan) throw new Error(`The chart names a step "${id}" that was never planned.`);
  return plan;
}

/** The speed a powered step runs at, in rev/min. */
export function speedOf(plan: StepPlan, numbers: Numbers, context: FlowContext): number | null {
  const { step } = plan;
  if (step.kind !== 'cut' && step.kind !== 'passes') return null;
  return numbers.number(step.speed, context.readings) ?? null;
}
