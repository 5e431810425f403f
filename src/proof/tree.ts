/** What a run depended on, kept as a tree: at each fork one variable was looked at, at each leaf stands what came of it. */

import { noRows, type ValueSet, type ValueSets } from './value-sets.ts';
import type { Held, Variable } from './variables.ts';
import type { Look } from './watched.ts';

export interface Tree<T> {
  /** The name of the variable that was looked at here, as its step calls it. */
  fork?: { readonly name: string; readonly ways: Map<Held, Tree<T>> };
  leaf?: { readonly value: T };
}

/** A step's own names for variables: two steps of one shape share trees, and call their readings alike. */
export interface Names {
  variable(name: string): Variable;
  nameOf(variable: Variable): string;
}

export interface Growing<T> {
  readonly names: Names;
  /** The numbers that may occur at a level. */
  readonly valuesAt: (level: number) => readonly number[];
  /** Runs the chart or a question once; `look` answers for each variable that is looked at. */
  readonly run: (look: Look) => T;
}

export interface Visiting<T> {
  readonly sets: ValueSets;
  /** Outcomes that need no visit. */
  readonly dull: (value: T) => boolean;
  readonly visit: (value: T, rows: ValueSet) => void;
}

export type Exploring<T> = Omit<Growing<T>, 'valuesAt'> & Visiting<T>;

type Cube = readonly (readonly [level: number, value: number])[];

/** Outcomes with the values that lead to each; the one with the most leaves stands first. */
export type Groups<T> = readonly (readonly [value: T, leaves: readonly Cube[]])[];

/**
 * Visits every outcome that some of `rows` come to, with those rows. Runs only where no run has been before.
 */
export function explore<T>(tree: Tree<T>, rows: ValueSet, how: Exploring<T>): void {
  if (rows !== noRows) within(tree, rows, how, new Map());
}

/** Row by row only as far as they differ in what is looked at: what never occurs together is not run. */
function within<T>(
  tree: Tree<T>,
  rows: ValueSet,
  how: Exploring<T>,
  assumed: Map<string, Held>,
): void {
  const { sets, names, dull, visit } = how;
  if (!tree.leaf && !tree.fork) {
    let left = rows;
    grow(tree, how, assumed, (level) => {
      const number = sets.valuesAt(left, level)[0] ?? 0;
      left = sets.where(left, level, number);
      return number;
    });
  }
  if (tree.leaf && !dull(tree.leaf.value)) visit(tree.leaf.value, rows);
  if (!tree.fork) return;
  const { name, ways } = tree.fork;
  const { level, values } = names.variable(name);
  for (const number of sets.valuesAt(rows, level)) {
    const held = values.at(number);
    const way = ways.get(held) ?? {};
    ways.set(held, way);
    assumed.set(name, held);
    within(way, sets.where(rows, level, number), how, assumed);
  }
  assumed.delete(name);
}

/**
 * Grows the tree for every value that occurs at a fork's level, whatever stands at the others: a little more than is
 * needed, so that no set has to be cut up only to find that nothing is missing.
 */
export function groupsOf<T>(tree: Tree<T>, how: Growing<T>): Groups<T> {
  const cubes = new Map<T, Cube[]>();
  collect(tree, how, new Map(), [], cubes);
  return [...cubes].sort(([, a], [, b]) => b.length - a.length);
}

/** The first outcome is given what the others leave: a gate that still lacks something is one outcome of many leaves. */
export function visitGroups<T>(
  [most, ...others]: Groups<T>,
  rows: ValueSet,
  { sets, dull, visit }: Visiting<T>,
): void {
  if (!most) return;
  let rest = rows;
  const needed = !dull(most[0]);
  for (const [value, leaves] of others) {
    if (!needed && dull(value)) continue;
    let some = noRows;
    for (const cube of leaves) some = sets.union(some, sets.whereAll(rows, cube));
    if (some === noRows) continue;
    if (needed) rest = sets.minus(rest, some);
    if (!dull(value)) visit(value, some);
  }
  if (needed && rest !== noRows) visit(most[0], rest);
}

function collect<T>(
  tree: Tree<T>,
  how: Growing<T>,
  assumed: Map<string, Held>,
  cube: Cube,
  cubes: Map<T, Cube[]>,
): void {
  if (!tree.leaf && !tree.fork) {
    grow(tree, how, assumed, (level) => how.valuesAt(level)[0] ?? 0);
  }
  if (tree.leaf) {
    const leaves = cubes.get(tree.leaf.value) ?? [];
    leaves.push(cube);
    cubes.set(tree.leaf.value, leaves);
  }
  if (!tree.fork) return;
  const { name, ways } = tree.fork;
  const { level, values } = how.names.variable(name);
  for (const number of how.valuesAt(level)) {
    const held = values.at(number);
    const way = ways.get(held) ?? {};
    ways.set(held, way);
    assumed.set(name, held);
    collect(way, how, assumed, [...cube, [level, number]], cubes);
  }
  assumed.delete(name);
}

/** One run: it grows the tree along the values that are picked. */
function grow<T>(
  tree: Tree<T>,
  { names, run }: Pick<Growing<T>, 'names' | 'run'>,
  assumed: ReadonlyMap<string, Held>,
  pick: (level: number) => number,
): void {
  const known = new Map(assumed);
  let at = tree;
  const value = run((variable) => {
    const name = names.nameOf(variable);
    const old = known.get(name);
    if (old !== undefined) return variable.values.numberOf(old);
    const number = pick(variable.level);
    const held = variable.values.at(number);
    const way: Tree<T> = {};
    at.fork = { name, ways: new Map([[held, way]]) };
    at = way;
    known.set(name, held);
    return number;
  });
  at.leaf = { value };
}
