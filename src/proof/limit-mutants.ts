/** Flows in which a speed is no longer held to a limit: of the chuck, of the machine, or of the work. */

import {
  type Card,
  constantInBase,
  type Flow,
  type FlowFile,
  type FlowInput,
  type JobInputs,
  type ValueRef,
  workOut,
} from '../flow/index.ts';
import type { Quantity } from '../trade/index.ts';
import type { Mutant } from './mutants.ts';
import { speedLimitOf, turnsAt } from './speed-limit.ts';

const limitNames = ['chuckLimit', 'cardLimit', 'workLimit'] as const;

/** Each limit that a working is given, and each that a step states, taken out one at a time. */
export function limitMutants(file: FlowFile): readonly Mutant[] {
  const given = file.workings.flatMap((working) =>
    limitNames.flatMap((limit): readonly Mutant[] => {
      const { [limit]: taken, ...rest } = working.given;
      const steps = file.steps.filter((step) => turnsAt(step, working.id)).map(({ id }) => id);
      if (!taken || steps.length === 0) return [];
      const workings = file.workings.map((one) =>
        one === working ? { ...one, given: rest } : one,
      );
      const name = `limit "${limit}" of working "${working.id}"`;
      return [{ kind: 'limit', name, steps, file: { ...file, workings } }];
    }),
  );
  const stated = file.steps.flatMap((step): readonly Mutant[] => {
    if (!('workLimit' in step) || !step.workLimit) return [];
    const { workLimit: _, ...rest } = step;
    const steps = file.steps.map((one) => (one === step ? rest : one));
    const name = `limit "workLimit" of step "${step.id}"`;
    return [{ kind: 'limit', name, steps: [step.id], file: { ...file, steps } }];
  });
  return [...given, ...stated];
}

interface PassedLimit {
  /** Sets of numbers that were worked out; none where there are too many to try. */
  readonly tried: number;
  /** Numbers for which a step turns faster than a limit allows. */
  readonly passed?: JobInputs;
  readonly step?: string;
}

const mostTried = 2_000;

const known = new WeakMap<Flow, PassedLimit>();

/**
 * Looks for numbers at the ends of what may be put in, in all combinations, at which one of `steps` turns too fast.
 * A flow is a mutant here, and is asked about with the same card and steps again: the answer is kept.
 */
export function findPassedLimit(flow: Flow, card: Card, steps: readonly string[]): PassedLimit {
  const found = known.get(flow) ?? lookForPassed(flow, card, steps);
  known.set(flow, found);
  return found;
}

function lookForPassed(flow: Flow, card: Card, steps: readonly string[]): PassedLimit {
  const powered = steps.flatMap((id) => {
    const step = flow.steps.get(id);
    return step && 'speed' in step ? [step] : [];
  });
  const inputs = new Set(
    powered.flatMap((step) => [
      ...inputsBehind(step.speed, flow),
      ...(step.workLimit ? inputsBehind(step.workLimit, flow) : []),
    ]),
  );
  const sets = combinations(flow.file.inputs.filter(({ id }) => inputs.has(id)));
  if (sets.length > mostTried) return { tried: 0 };
  for (const given of sets) {
    const worked = workOut(flow, card, given);
    if (!worked.ok) continue;
    const fast = powered.find(
      (step) =>
        (worked.numbers.number(step.speed, {}) ?? 0) > speedLimitOf(step, worked.numbers, card),
    );
    if (fast) return { tried: sets.length, passed: given, step: fast.id };
  }
  return { tried: sets.length };
}

function inputsBehind(ref: ValueRef, flow: Flow, seen = new Set<string>()): readonly string[] {
  if ('input' in ref) return [ref.input];
  if (!('working' in ref) || seen.has(ref.working)) return [];
  seen.add(ref.working);
  const given = flow.scope.workings.get(ref.working)?.given ?? {};
  return Object.values(given).flatMap((one) => inputsBehind(one, flow, seen));
}

function combinations(inputs: readonly FlowInput[]): readonly JobInputs[] {
  return inputs.reduce<readonly JobInputs[]>(
    (sets, input) =>
      sets.length > mostTried
        ? sets
        : sets.flatMap((set) => endsOf(input).map((value) => ({ ...set, [input.id]: value }))),
    [{}],
  );
}

/** Both ends of a number in base units, or every choice. */
export function endsOf(input: FlowInput): readonly (number | string)[] {
  if ('options' in input) return input.options;
  return [input.min, input.max].map((end) =>
    constantInBase(end, input.unit, input.quantity as Quantity),
  );
}
