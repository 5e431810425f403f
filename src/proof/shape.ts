/**
 * The shape of a step: all that the chart does in it, told without names.
 *
 * Two steps have one shape when the chart was built from the same plan but for names: then XState does the same in both,
 * and what one of them was seen to do need not be watched again in the other. The shape holds all that `stepNode`, the
 * guards, the assigns and the questions of the proof take from a plan; and of every step that it can lead to, what one
 * small step into that step does, since nothing is ever followed further in one go (stepper.ts).
 * Names of readings and of other steps are replaced by their place in the step's own list.
 */

import {
  type Condition,
  endStep,
  type Job,
  type MachineKind,
  readingsBehind,
  type SpeedLimit,
  type Step,
  type StepPlan,
  type ValueRef,
} from '../flow/index.ts';
import type { Quantity } from '../trade/index.ts';
import { runsAbove } from './condition.ts';
import type { Ids } from './ids.ts';
import { beginsOf, claimsUndone } from './judge-move.ts';
import type { Held } from './variables.ts';

/** What a shape is made of: the step, where it can lead, and its own names for readings. */
export interface Shaping {
  readonly job: Job;
  readonly plan: StepPlan;
  /** The step itself, its targets in order, and where "back" leads. */
  readonly slots: readonly string[];
  /** "@0", or "-" for what no variable stands for. */
  readonly called: (name: string) => string;
  readonly nameOf: (speed: number) => Held;
  readonly ids: Ids;
}

/** One text for one shape. */
export function shapeOf(shaping: Shaping): string {
  const { job, plan, slots } = shaping;
  const others = slots.slice(1).map((id) => {
    const other = job.plans.get(id);
    return other ? entryOf(shaping, other) : endStep;
  });
  const order = slots.map((id) => slots.indexOf(id));
  return JSON.stringify([planOf(shaping, plan), others, order, backOf(shaping)]);
}

function backOf({ job, plan, called }: Shaping): unknown {
  const { back, step } = plan;
  if (!back) return null;
  const names = [
    ...back.readings.map((id) => `reading:${id}`),
    ...back.passes.map((id) => `pass:${id}`),
  ];
  const to = job.flow.steps.get(back.to);
  return [back.facts, names.map(called), claimsUndone(job, back.to, step.id), to && beginsOf(to)];
}

/** All that the chart takes from the plan of a step, itself or one that it leads to. */
function planOf(shaping: Shaping, plan: StepPlan): unknown {
  const { step, gate, cutting, powered, hands, walks } = plan;
  const { called } = shaping;
  return [
    step.kind,
    gate,
    cutting,
    powered ? turningOf(shaping, step) : null,
    hands,
    walks,
    step.release ?? null,
    step.moment ?? null,
    step.kind === 'check' ? step.facts : null,
    step.kind === 'do' ? [step.begins, step.ends] : null,
    step.kind === 'choose' ? step.options.map((option) => option.id) : null,
    'side' in step ? step.side : null,
    'reading' in step ? [called(`reading:${step.reading.id}`), step.reading.quantity] : null,
    called(`pass:${step.id}`),
    limitRefs(step).map((ref) => figureKey(shaping, ref, step)),
  ];
}

/** What one small step into a step does: its gate's entry, or without a gate that of its first state. */
function entryOf(shaping: Shaping, plan: StepPlan): unknown {
  const { step, gate, powered } = plan;
  const gated = Object.keys(gate).length > 0;
  return gated && step.kind !== 'passes' && !powered
    ? ['gate', step.release ?? null]
    : planOf(shaping, plan);
}

/** A value as a number where no reading stands behind it; else all that it can be worked out from. */
function figureKey({ job, called, ids }: Shaping, ref: ValueRef | undefined, step: Step): unknown {
  if (!ref) return null;
  const quantity = 'reading' in step ? (step.reading.quantity as Quantity) : undefined;
  const readings = readingsBehind(ref, job.flow.scope);
  if (readings.length === 0) {
    return [job.numbers.number(ref, {}) ?? null, job.numbers.number(ref, {}, quantity) ?? null];
  }
  const names = readings.map((id) => called(`reading:${id}`));
  return 'reading' in ref ? names : [names, ref, numbersOf(job, ids)];
}

/** The speed of a step: its name, or all that it is worked out from, with all that names depend on. */
export function speedText(shaping: Shaping, id: string): string {
  const step = shaping.job.plans.get(id)?.step;
  return JSON.stringify(step && 'speed' in step ? speedKey(shaping, step.speed, step) : null);
}

function speedKey(shaping: Shaping, ref: ValueRef, step: Step): unknown {
  const { job, ids, nameOf } = shaping;
  if (readingsBehind(ref, job.flow.scope).length > 0) {
    return [figureKey(shaping, ref, step), numbersOf(job, ids)];
  }
  const speed = job.numbers.number(ref, {});
  return speed === undefined ? null : nameOf(speed);
}

/** The speed of a step, and which limits that hazards hold it against it is above. */
function turningOf(shaping: Shaping, step: Step): unknown {
  if (!('speed' in step)) return null;
  const { job } = shaping;
  const { speed, workLimit } = step;
  const limits = limitNames(job.flow.kind);
  const key = speedKey(shaping, speed, step);
  const refs = workLimit ? [speed, workLimit] : [speed];
  if (refs.some((ref) => readingsBehind(ref, job.flow.scope).length > 0)) {
    const all = refs.map((ref) => figureKey(shaping, ref, step));
    return [key, all, limits.map((name) => job.card.values[name] ?? null)];
  }
  return [key, limits.map((name) => runsAbove(name, job, step, {}))];
}

/** All that readings can be worked into something by. */
function numbersOf({ flow, card, numbers }: Job, ids: Ids): number {
  const { inputs, running } = numbers;
  return ids.ofText(JSON.stringify([flow.file.workings, card, inputs, running]));
}

/** The limits that hazards hold a speed against. */
function limitNames({ hazards }: MachineKind): readonly SpeedLimit[] {
  const within = (condition: Condition): readonly SpeedLimit[] => {
    if ('all' in condition) return condition.all.flatMap(within);
    if ('any' in condition) return condition.any.flatMap(within);
    return 'speedAbove' in condition ? [condition.speedAbove] : [];
  };
  return hazards.flatMap(({ never }) => within(never));
}

/** The values that guards and assigns work with. */
export function refsOf(step: Step): readonly (ValueRef | undefined)[] {
  const speed = 'speed' in step ? [step.speed, step.workLimit] : [];
  return [...speed, ...limitRefs(step)];
}

/** The same but for the speed. */
function limitRefs(step: Step): readonly (ValueRef | undefined)[] {
  if (!('reading' in step)) return [];
  const { min, max } = step.reading;
  if (step.kind === 'measure') return [min, max];
  const limits = [min, max, step.lower, step.upper];
  if (step.kind === 'inspect') return limits;
  return [...limits, step.from, step.finish, step.deepest, step.finishAllowance];
}
