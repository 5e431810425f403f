/**
 * A step as the reduced walk sees it: where it can lead, what it can look at, and its shape.
 *
 * Two steps have one shape when the chart was built from the same plan but for names: then XState does the same in both,
 * and what one of them was seen to do need not be watched again in the other. The shape holds all that `stepNode` and
 * the guards take from a plan, and the same of every step that it can lead to.
 * Names of own readings and of other steps are replaced by their place in the list.
 */

import {
  endStep,
  type Job,
  readingsBehind,
  type Step,
  type StepPlan,
  type ValueRef,
} from '../flow/index.ts';
import { claimsUndone } from './judge-move.ts';
import type { Memory } from './memory.ts';
import type { Names } from './tree.ts';
import type { Variable, Variables } from './variables.ts';

export class Frame implements Names {
  /** The step itself, its targets in order, and where "back" leads. */
  readonly slots: readonly string[];
  readonly shape: string;
  /** Names of the readings and passes that the chart may look at while it is in this step or enters the next. */
  readonly nearby: ReadonlySet<string>;
  private readonly near: readonly string[];
  private readonly variables: Variables;

  constructor(
    readonly plan: StepPlan,
    readonly index: number,
    job: Job,
    variables: Variables,
    private readonly memory: Memory,
  ) {
    this.variables = variables;
    const { back, targets, step } = plan;
    this.slots = [step.id, ...targets, ...(back ? [back.to] : [])];
    const plans = this.slots.slice(1).map((id) => job.plans.get(id));
    const list = nearOf(plan, plans, job);
    this.near = list.filter((name) => variables.named(name));
    this.nearby = new Set(list);
    // What follows by itself is looked at in one go: out of this step, through the next one's gate, into its first state.
    const other = plans.map((one) => (one ? this.keyOf(one, job) : endStep));
    const order = this.slots.map((id) => this.slots.indexOf(id));
    this.shape = JSON.stringify([
      memory.kindId(job),
      this.keyOf(plan, job),
      other,
      order,
      this.backKey(job),
    ]);
  }

  get step(): Step {
    return this.plan.step;
  }

  /** True when the chart can look at no reading from here: facts and the speed are all there is. */
  get plain(): boolean {
    return this.near.length === 0;
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

  private called(name: string): string {
    const at = this.near.indexOf(name);
    return at < 0 ? '-' : `@${at}`;
  }

  private backKey(job: Job): unknown {
    const { back } = this.plan;
    if (!back) return null;
    const names = [
      ...back.readings.map((id) => `reading:${id}`),
      ...back.passes.map((id) => `pass:${id}`),
    ];
    return [
      back.facts,
      names.map((name) => this.called(name)),
      claimsUndone(job, back.to, this.step.id),
    ];
  }

  /** All that the chart takes from the plan of a step, itself or one that it leads to. */
  private keyOf({ step, gate, cutting, powered, hands, walks }: StepPlan, job: Job): unknown {
    const refs = refsOf(step).map((ref) => this.refKey(ref, job));
    const own = 'reading' in step ? this.called(`reading:${step.reading.id}`) : null;
    return [
      step.kind,
      gate,
      cutting,
      powered,
      hands,
      walks,
      step.moment ?? null,
      step.kind === 'check' ? step.facts : null,
      step.kind === 'do' ? [step.begins, step.ends] : null,
      step.kind === 'choose' ? step.options.map((option) => option.id) : null,
      'side' in step ? step.side : null,
      own,
      this.called(`pass:${step.id}`),
      refs,
    ];
  }

  /** A value as a number where no reading stands behind it; else all that it can be worked out from. */
  private refKey(ref: ValueRef | undefined, job: Job): unknown {
    if (!ref) return null;
    const readings = readingsBehind(ref, job.flow.scope);
    if (readings.length === 0) return job.numbers.number(ref, {}) ?? null;
    const names = readings.map((id) => this.called(`reading:${id}`));
    return 'reading' in ref ? names : [names, ref, this.memory.numbersId(job)];
  }
}

/** The values that guards and assigns work with. */
function refsOf(step: Step): readonly (ValueRef | undefined)[] {
  const speed = 'speed' in step ? [step.speed] : [];
  if (!('reading' in step)) return speed;
  const { min, max } = step.reading;
  if (step.kind === 'measure') return [min, max];
  const limits = [min, max, step.lower, step.upper];
  if (step.kind === 'inspect') return limits;
  return [...speed, ...limits, step.from, step.finish, step.deepest, step.finishAllowance];
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
  const { back } = plan;
  names.push(...(back?.readings ?? []).map((id) => `reading:${id}`));
  names.push(...(back?.passes ?? []).map((id) => `pass:${id}`));
  return [...new Set(names)];
}
