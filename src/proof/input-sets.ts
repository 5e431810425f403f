/**
 * Which sets of numbers a job is proved for: every value of every input in question, at both its ends, as proposed, and
 * each choice. All combinations where these are few; else sets in which every three values of three inputs come together,
 * since what goes wrong with numbers mostly takes two of them. Nothing is said of combinations that are in no set.
 */

import {
  type Card,
  constantInBase,
  type Flow,
  type FlowInput,
  type JobInputs,
  workOut,
} from '../flow/index.ts';
import type { Quantity } from '../trade/index.ts';

/** One value that an input may have. */
interface Value {
  readonly input: string;
  /** Rising, input by input. */
  readonly at: number;
  /** "bar-diameter 12 mm", "tool carbide". */
  readonly name: string;
  readonly base: number | string;
}

export interface InputSet {
  readonly name: string;
  readonly inputs: JobInputs;
}

export interface InputSets {
  readonly how: 'all' | 'triples';
  /** Those that a job begins with. */
  readonly sets: readonly InputSet[];
  /** All combinations of these values. */
  readonly possible: number;
  /** Of `all`, the combinations that no job begins with: a rule or the dial refuses them. */
  readonly refused: number;
  /** Of `triples`, two or three values that were not found together in any job that begins. */
  readonly apart: readonly string[];
}

/** So many at once come together in the sets. */
const together = 3;

/** `most`: combinations that are all taken; of more, enough that every three values come together. */
export function inputSetsOf(flow: Flow, card: Card, most = 1000): InputSets {
  const values = valuesOf(flow.file.inputs);
  const possible = values.reduce((product, list) => product * list.length, 1);
  const begins = (chosen: readonly Value[]) => workOut(flow, card, inputsOf(chosen)).ok;
  if (possible > most) {
    return { how: 'triples', possible, refused: 0, ...new Covering(values, begins).cover() };
  }
  const all = products(values);
  const sets = all.filter(begins).map(setOf);
  return { how: 'all', sets, possible, refused: all.length - sets.length, apart: [] };
}

/** Of each input what is proposed first, then both ends; of a choice, every one. */
function valuesOf(inputs: readonly FlowInput[]): readonly (readonly Value[])[] {
  let at = 0;
  return inputs.map((input) =>
    valuesOfOne(input).map(({ name, base }) => ({ input: input.id, name, base, at: at++ })),
  );
}

function valuesOfOne(input: FlowInput): readonly Pick<Value, 'name' | 'base'>[] {
  const { id } = input;
  if ('options' in input) {
    const options = [...new Set([input.default, ...input.options])];
    return options.map((one) => ({ name: `${id} ${one}`, base: one }));
  }
  return [...new Set([input.default, input.min, input.max])].map((size) => ({
    name: `${id} ${size} ${input.unit}`,
    base: constantInBase(size, input.unit, input.quantity as Quantity),
  }));
}

function inputsOf(chosen: readonly Value[]): JobInputs {
  return Object.fromEntries(chosen.map(({ input, base }) => [input, base]));
}

function setOf(chosen: readonly Value[]): InputSet {
  return { name: chosen.map(({ name }) => name).join(', '), inputs: inputsOf(chosen) };
}

/** Sets that some values are tried in, before it is said that they are not found together. */
const tries = 40;

/**
 * First every two values, then every three that hold no two which were not found together. Greedy: each set begins with
 * some that are still missing, and takes in as many others as it can.
 */
class Covering {
  private readonly missing = new Map<string, readonly Value[]>();
  private readonly apart: (readonly Value[])[] = [];
  private readonly made: (readonly Value[])[] = [];
  private readonly random = numbersFrom(20_240_917);
  private width = 2;

  constructor(
    private readonly values: readonly (readonly Value[])[],
    private readonly begins: (chosen: readonly Value[]) => boolean,
  ) {}

  cover(): Pick<InputSets, 'sets' | 'apart'> {
    for (this.width = 2; this.width <= together; this.width += 1) this.coverAll();
    const apart = this.apart.map((values) => values.map(({ name }) => name).join(' with '));
    return { sets: this.made.map(setOf), apart };
  }

  private coverAll(): void {
    for (const lists of choices(this.values, this.width)) {
      for (const some of products(lists)) {
        if (!this.holdsApart(some)) this.missing.set(keyOf(some), some);
      }
    }
    for (const chosen of this.made) this.strike(chosen);
    for (const [key, some] of this.missing) {
      const found = this.around(some);
      if (found) {
        this.made.push(found);
        this.strike(found);
      } else {
        this.apart.push(some);
        this.missing.delete(key);
      }
    }
  }

  private holdsApart(some: readonly Value[]): boolean {
    return this.apart.some((values) => values.every((value) => some.includes(value)));
  }

  /** A set with all of them that a job begins with, and with as much of what is missing as it can still take in. */
  private around(some: readonly Value[]): readonly Value[] | undefined {
    for (let turn = 0; turn < tries; turn += 1) {
      const chosen = this.filled(some, turn);
      if (this.begins(chosen)) return this.enriched(chosen, some);
    }
    return undefined;
  }

  /** With the others as proposed; where no job begins so, by chance. */
  private filled(some: readonly Value[], turn: number): readonly Value[] {
    return this.values.flatMap((list) => {
      const own = some.find(({ input }) => input === list[0]?.input);
      const any = turn === 0 ? list[0] : list[Math.floor(this.random() * list.length)];
      return own ?? any ?? [];
    });
  }

  /** Each value in turn is exchanged for the one that brings most, as long as the job still begins. */
  private enriched(from: readonly Value[], some: readonly Value[]): readonly Value[] {
    let chosen = from;
    this.values.forEach((list, at) => {
      if (some.some(({ input }) => input === list[0]?.input)) return;
      const others = choices(chosen.toSpliced(at, 1), this.width - 1);
      const gain = (value: Value) =>
        others.filter((few) => this.missing.has(keyOf([...few, value]))).length;
      const gains = new Map(list.map((value) => [value, gain(value)]));
      const gained = (value: Value | undefined) => (value && gains.get(value)) ?? -1;
      const exchanged = (value: Value) => chosen.with(at, value);
      const now = chosen[at];
      const better = list
        .filter((value) => gained(value) > gained(now))
        .sort((a, b) => gained(b) - gained(a));
      const best = better.find((value) => this.begins(exchanged(value)));
      if (best) chosen = exchanged(best);
    });
    return chosen;
  }

  private strike(chosen: readonly Value[]): void {
    for (const some of choices(chosen, this.width)) this.missing.delete(keyOf(some));
  }
}

function keyOf(some: readonly Value[]): string {
  return some
    .map(({ at }) => at)
    .sort((a, b) => a - b)
    .join();
}

/** Every `width` of a list, in its order. */
function choices<T>(list: readonly T[], width: number): readonly (readonly T[])[] {
  if (width === 0) return [[]];
  return list.flatMap((one, at) =>
    choices(list.slice(at + 1), width - 1).map((rest) => [one, ...rest]),
  );
}

/** One of each list. */
function products<T>(lists: readonly (readonly T[])[]): readonly (readonly T[])[] {
  return lists.reduce<readonly (readonly T[])[]>(
    (all, list) => all.flatMap((some) => list.map((one) => [...some, one])),
    [[]],
  );
}

/** The same numbers from 0 to 1 every time (Park and Miller's minimal standard, 1988). */
function numbersFrom(seed: number): () => number {
  let now = seed;
  return () => {
    now = (now * 48_271) % 2_147_483_647;
    return now / 2_147_483_647;
  };
}
