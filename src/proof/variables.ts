/** What a situation holds besides its place in the chart: facts, the speed that is set, and readings that something depends on. */

import {
  type FlowContext,
  type Job,
  type MachineKind,
  type PassState,
  readingsBehind,
  type Step,
  unknownState,
  type ValueRef,
} from '../flow/index.ts';
import { worded } from '../texts/index.ts';
import { plainSpeeds, type Speeds } from './speeds.ts';
import type { AskedStates } from './told-apart.ts';
import { TooLarge } from './walk-limits.ts';

/** What a variable can hold: a fact's state, a number, or nothing yet. */
export type Held = string | number | null;

export type VariableKind = 'fact' | 'speed' | 'reading' | 'pass';

export interface Variable {
  readonly kind: VariableKind;
  /** The fact, the reading, or the step of the passes. */
  readonly key: string;
  readonly name: string;
  readonly level: number;
  /** Stands in the context where the value is left open; only its identity counts. */
  readonly token: object;
  readonly values: Values;
}

const mostValues = 4096;

/** Numbers for what a variable can hold; 0 is always "not known" or "not taken". */
export class Values {
  private readonly numbers = new Map<Held, number>();
  private readonly held: Held[] = [];

  /** `closed` sets hold these and no others: any other value counts as the first. */
  constructor(
    first: readonly Held[],
    private readonly closed = false,
  ) {
    for (const value of first) this.add(value);
  }

  numberOf(value: Held): number {
    return this.numbers.get(value) ?? (this.closed ? 0 : this.add(value));
  }

  private add(value: Held): number {
    const made = this.held.length;
    if (made >= mostValues) throw new TooLarge(worded`More than ${mostValues} values of one kind.`);
    this.numbers.set(value, made);
    this.held.push(value);
    return made;
  }

  at(number: number): Held {
    return this.held[number] ?? null;
  }

  get size(): number {
    return this.held.length;
  }
}

/**
 * Variables by name, each with a level of its own. Facts stand above, late readings above early ones: what changes
 * together is near the top. Kept over several proofs: a name keeps its level and its numbers, and new names come below,
 * so that what was seen of a step still holds after an edit.
 */
export class KnownVariables {
  readonly facts: readonly Variable[];
  readonly speed: Variable;
  private readonly byName = new Map<string, Variable>();
  private readonly byToken = new Map<unknown, Variable>();

  constructor(kind: MachineKind, asked: AskedStates) {
    this.facts = kind.facts.map((fact) => {
      const values = new Values([unknownState, ...(asked.get(fact.id) ?? [])], true);
      return this.add('fact', fact.id, values);
    });
    this.speed = this.add('speed', '', new Values([null]));
  }

  /** A reading or a pass; made where it is new. */
  number(kind: 'reading' | 'pass', key: string): Variable {
    return this.named(`${kind}:${key}`) ?? this.add(kind, key, new Values([null]));
  }

  private add(kind: VariableKind, key: string, values: Values): Variable {
    const token = Object.freeze({ size: Number.NaN, dial: Number.NaN });
    const made = { kind, key, name: `${kind}:${key}`, level: this.byName.size, token, values };
    this.byName.set(made.name, made);
    this.byToken.set(token, made);
    return made;
  }

  named(name: string): Variable | undefined {
    return this.byName.get(name);
  }

  /** The variable whose value was left open, if that is what stands there. */
  behind(token: unknown): Variable | undefined {
    return typeof token === 'object' ? this.byToken.get(token) : undefined;
  }

  /** The most values that a variable holds. */
  get widest(): number {
    return Math.max(...[...this.byName.values()].map(({ values }) => values.size));
  }
}

/** The variables of one job among those that are known. */
export class Variables {
  readonly all: readonly Variable[];
  private readonly own: ReadonlySet<string>;

  constructor(
    job: Job,
    private readonly known: KnownVariables,
    private readonly speeds: Speeds = plainSpeeds,
  ) {
    const used = usedReadings(job);
    const late = [...job.flow.file.steps]
      .reverse()
      .flatMap((step) => [
        ...(step.kind === 'passes' ? [known.number('pass', step.id)] : []),
        ...('reading' in step && used.has(step.reading.id)
          ? [known.number('reading', step.reading.id)]
          : []),
      ]);
    this.all = [...known.facts, known.speed, ...late];
    this.own = new Set(this.all.map(({ name }) => name));
  }

  named(name: string): Variable | undefined {
    return this.own.has(name) ? this.known.named(name) : undefined;
  }

  behind(token: unknown): Variable | undefined {
    return this.known.behind(token);
  }

  /** How a speed is called in a row. */
  speedName(speed: number): Held {
    return this.speeds.nameOf(speed);
  }

  /** A value as the chart holds it. What the dial reads is never looked at by a guard: any number does. */
  asHeld({ kind }: Variable, value: Held): string | number | null | undefined | PassState {
    if (kind === 'fact') return value;
    if (kind === 'speed') return value === null ? null : this.speeds.speedOf(value);
    if (value === null) return undefined;
    return kind === 'pass' ? { size: Number(value), dial: 0 } : value;
  }

  /** A value of the chart as a row holds it. */
  fromHeld({ kind }: Variable, held: unknown): Held {
    if (kind === 'speed') return typeof held === 'number' ? this.speeds.nameOf(held) : null;
    if (typeof held === 'string' || typeof held === 'number') return held;
    if (typeof held === 'object' && held !== null && 'size' in held) return Number(held.size);
    return null;
  }
}

/** What the context holds of a variable. */
export function heldIn(context: FlowContext, variable: Variable): unknown {
  switch (variable.kind) {
    case 'fact':
      return context.facts[variable.key];
    case 'speed':
      return context.speedSet;
    case 'reading':
      return context.readings[variable.key] ?? null;
    case 'pass':
      return context.passes[variable.key] ?? null;
  }
}

/** Readings that a limit, a speed, a figure or a sentence is worked out from: the others are taken and never looked at. */
function usedReadings(job: Job): ReadonlySet<string> {
  const used = new Set<string>();
  for (const step of job.flow.file.steps) {
    for (const ref of valueRefsOf(step, job)) {
      for (const reading of readingsBehind(ref, job.flow.scope)) used.add(reading);
    }
  }
  return used;
}

/** Every value that a step names, in its limits, figures and sentences, that readings may stand behind. */
export function valueRefsOf(step: Step, job: Job): readonly ValueRef[] {
  const found: ValueRef[] = [];
  const look = (value: unknown): void => {
    if (typeof value === 'string') found.push(...refsIn(value, job));
    else if (Array.isArray(value)) value.forEach(look);
    else if (isRef(value)) found.push(value);
    else if (typeof value === 'object' && value !== null) Object.values(value).forEach(look);
  };
  look(step);
  return found;
}

function isRef(value: unknown): value is ValueRef {
  if (typeof value !== 'object' || value === null) return false;
  const keys = Object.keys(value);
  if (keys.length === 0 || keys.length > 2) return false;
  return ['working', 'reading'].some((key) => {
    const named = (value as Record<string, unknown>)[key];
    return typeof named === 'string';
  });
}

/** Every {name} of a sentence that is a working or a reading. */
function refsIn(text: string, { flow: { scope } }: Job): readonly ValueRef[] {
  return [...text.matchAll(/\{([A-Za-z0-9]+)/g)].flatMap(([, name = '']): ValueRef[] => {
    if (scope.workings.has(name)) return [{ working: name }];
    return scope.readings.has(name) ? [{ reading: name }] : [];
  });
}
