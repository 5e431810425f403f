/**
 * Which sets of numbers a job is proved for: every value of every input in question, at both its ends, as proposed, and
 * each choice. All combinations where these are few; else sets in which every two values of two inputs come together,
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
  /** "bar-diameter 12 mm", "tool carbide". */
  readonly name: string;
  readonly base: number | string;
}

export interface InputSet {
  readonly name: string;
  readonly inputs: JobInputs;
}

export interface InputSets {
  readonly how: 'all' | 'pairs';
  /** Those that a job begins with. */
  readonly sets: readonly InputSet[];
  /** All combinations of these values. */
  readonly possible: number;
  /** Of `all`, the combinations that no job begins with: a rule or the dial refuses them. */
  readonly refused: number;
  /** Of `pairs`, two values that were not found together in any job that begins. */
  readonly apart: readonly string[];
}

/** `most`: combinations that are all taken; of more, pairs. */
export function inputSetsOf(flow: Flow, card: Card, most = 64): InputSets {
  const values = flow.file.inputs.map(valuesOf);
  const possible = values.reduce((product, list) => product * list.length, 1);
  const begins = (chosen: readonly Value[]) => workOut(flow, card, inputsOf(chosen)).ok;
  if (possible > most) {
    return { how: 'pairs', possible, refused: 0, ...new Pairs(values, begins).cover() };
  }
  const all = values.reduce<readonly (readonly Value[])[]>(
    (sets, list) => sets.flatMap((set) => list.map((value) => [...set, value])),
    [[]],
  );
  const sets = all.filter(begins).map(setOf);
  return { how: 'all', sets, possible, refused: all.length - sets.length, apart: [] };
}

/** What is proposed first, then both ends; of a choice, every one. */
function valuesOf(input: FlowInput): readonly Value[] {
  const { id } = input;
  if ('options' in input) {
    const options = [...new Set([input.default, ...input.options])];
    return options.map((one) => ({ input: id, name: `${id} ${one}`, base: one }));
  }
  return [...new Set([input.default, input.min, input.max])].map((size) => ({
    input: id,
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

/** Sets that a pair is tried in, before it is said not to be found together. */
const tries = 40;

/** Greedy: each set begins with a pair that is still missing, and takes in as many others as it can. */
class Pairs {
  private readonly missing = new Map<string, readonly [Value, Value]>();
  private readonly random = numbersFrom(20_240_917);

  constructor(
    private readonly values: readonly (readonly Value[])[],
    private readonly begins: (chosen: readonly Value[]) => boolean,
  ) {
    values.forEach((list, at) => {
      for (const other of values.slice(at + 1)) {
        for (const a of list) for (const b of other) this.missing.set(pairName(a, b), [a, b]);
      }
    });
  }

  cover(): Pick<InputSets, 'sets' | 'apart'> {
    const sets: InputSet[] = [];
    const apart: string[] = [];
    for (const [name, pair] of this.missing) {
      const found = this.around(pair);
      if (found) {
        sets.push(setOf(found));
        this.strike(found);
      } else {
        apart.push(name);
        this.missing.delete(name);
      }
    }
    return { sets, apart };
  }

  /** A set with both that a job begins with, and with as much of what is missing as it can still take in. */
  private around(pair: readonly Value[]): readonly Value[] | undefined {
    for (let turn = 0; turn < tries; turn += 1) {
      const chosen = this.filled(pair, turn);
      if (this.begins(chosen)) return this.enriched(chosen, pair);
    }
    return undefined;
  }

  /** With the others as proposed; where no job begins so, by chance. */
  private filled(pair: readonly Value[], turn: number): readonly Value[] {
    return this.values.flatMap((list) => {
      const own = pair.find(({ input }) => input === list[0]?.input);
      const any = turn === 0 ? list[0] : list[Math.floor(this.random() * list.length)];
      return own ?? any ?? [];
    });
  }

  /** Each value in turn is exchanged for the one that brings most, as long as the job still begins. */
  private enriched(from: readonly Value[], pair: readonly Value[]): readonly Value[] {
    let chosen = from;
    this.values.forEach((list, at) => {
      if (pair.some(({ input }) => input === list[0]?.input)) return;
      const others = chosen.filter((_, index) => index !== at);
      const gain = (value: Value) =>
        others.filter((one) => this.missing.has(pairName(one, value))).length;
      const exchanged = (value: Value) => chosen.map((one, index) => (index === at ? value : one));
      const now = chosen[at];
      const better = list
        .filter((value) => value !== now && (!now || gain(value) > gain(now)))
        .sort((a, b) => gain(b) - gain(a));
      const best = better.find((value) => this.begins(exchanged(value)));
      if (best) chosen = exchanged(best);
    });
    return chosen;
  }

  private strike(chosen: readonly Value[]): void {
    for (const a of chosen) for (const b of chosen) this.missing.delete(pairName(a, b));
  }
}

function pairName(a: Value, b: Value): string {
  return [a.name, b.name].sort().join(' with ');
}

/** The same numbers from 0 to 1 every time (Park and Miller's minimal standard, 1988). */
function numbersFrom(seed: number): () => number {
  let now = seed;
  return () => {
    now = (now * 48_271) % 2_147_483_647;
    return now / 2_147_483_647;
  };
}
