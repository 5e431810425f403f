/** A step as the reduced walk sees it: where it can lead, what it can look at, its shape, and its own names for readings. */

import { type Job, readingsBehind, type Step, type StepPlan } from '../flow/index.ts';
import type { Ids } from './ids.ts';
import type { Live } from './live.ts';
import { refsOf, type Shaping, shapeOf, speedText } from './shape.ts';
import type { Names } from './tree.ts';
import { type Variable, type Variables, valueRefsOf } from './variables.ts';

export interface Framing {
  readonly job: Job;
  readonly variables: Variables;
  readonly live: Live;
  readonly ids: Ids;
}

export class Frame implements Names {
  /** The step itself, its targets in order, and where "back" leads. */
  readonly slots: readonly string[];
  /** What steps of one shape share: see shape.ts. */
  readonly shape: number;
  /** Steps of one key do the same with the same sets: of one shape, and the variables behind their names are the same. */
  readonly key: string;
  /** Names of the readings and passes that the chart may look at while it is in this step or enters the next. */
  readonly nearby: ReadonlySet<string>;
  /** By slot, the levels of what nothing looks at from there on. */
  readonly dead: readonly (readonly number[])[];
  private readonly near: readonly string[];
  private readonly variables: Variables;
  private readonly shaping: Shaping;

  constructor(
    readonly plan: StepPlan,
    readonly index: number,
    { job, variables, live, ids }: Framing,
  ) {
    this.variables = variables;
    const { back, targets, step } = plan;
    this.slots = [step.id, ...targets, ...(back ? [back.to] : [])];
    const plans = this.slots.slice(1).map((id) => job.plans.get(id));
    const list = nearOf(plan, plans, job);
    this.near = list.filter((name) => variables.named(name));
    this.nearby = new Set(list);
    const called = (name: string) => this.called(name);
    const nameOf = (speed: number) => variables.speedName(speed);
    this.shaping = { job, plan, slots: this.slots, called, nameOf, ids };
    this.shape = ids.ofText(shapeOf(this.shaping));
    this.dead = this.slots.map((id) =>
      id === step.id ? [] : live.deadBetween(step.id, id).map(({ level }) => level),
    );
    const levels = this.near.map((name) => this.variable(name).level);
    this.key = JSON.stringify([this.shape, levels, this.dead]);
  }

  get step(): Step {
    return this.plan.step;
  }

  /** Variables that stand open in a run: facts, the speed, and what is near. */
  open(): readonly Variable[] {
    this.opened ??= this.findOpen();
    return this.opened;
  }

  private opened: readonly Variable[] | undefined;

  private findOpen(): readonly Variable[] {
    const always = this.variables.all.filter(({ kind }) => kind === 'fact' || kind === 'speed');
    return [...always, ...this.near.map((name) => this.variable(name))];
  }

  variable(name: string): Variable {
    const own = name.startsWith('@') ? this.near[Number(name.slice(1))] : name;
    const found = this.variables.named(own ?? '');
    if (!found) throw new Error(`Step "${this.step.id}" has no variable "${name}".`);
    return found;
  }

  nameOf(variable: Variable): string {
    const at = this.near.indexOf(variable.name);
    return at < 0 ? variable.name : `@${at}`;
  }

  /** What stands behind the speed of a step: its number, or all that it is worked out from. */
  speedText(step: string): string {
    return speedText(this.shaping, step);
  }

  private called(name: string): string {
    const at = this.near.indexOf(name);
    return at < 0 ? '-' : `@${at}`;
  }
}

function nearOf(
  plan: StepPlan,
  others: readonly (StepPlan | undefined)[],
  job: Job,
): readonly string[] {
  const names: string[] = [];
  for (const one of [plan, ...others]) {
    if (!one) continue;
    const { step } = one;
    names.push(`pass:${step.id}`);
    if ('reading' in step) names.push(`reading:${step.reading.id}`);
    for (const ref of refsOf(step)) {
      const behind = ref ? readingsBehind(ref, job.flow.scope) : [];
      names.push(...behind.map((id) => `reading:${id}`));
    }
  }
  const { back, step } = plan;
  names.push(...(back?.readings ?? []).map((id) => `reading:${id}`));
  names.push(...(back?.passes ?? []).map((id) => `pass:${id}`));
  // Sentences and figures last, so that they do not change what the chart's own readings are called.
  for (const ref of valueRefsOf(step, job)) {
    names.push(...readingsBehind(ref, job.flow.scope).map((id) => `reading:${id}`));
  }
  return [...new Set(names)];
}
