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

export interface Exploring<T> {
  readonly sets: ValueSets;
  readonly names: Names;
  /** Runs the chart or a question once; `look` answers for each variable that is looked at. */
  readonly run: (look: Look) => T;
  /** Outcomes that need no visit. */
  readonly dull: (value: T) => boolean;
  readonly visit: (value: T, rows: ValueSet) => void;
}

type Cube = readonly (readonly [level: number, value: number])[];

/** Outcomes with the values that lead to each; the one with the most leaves stands first. */
export type Groups<T> = readonly (readonly [value: T, leaves: readonly Cube[]])[];

/**
 * Visits every outcome that some of `rows` come to, with those rows; equal outcomes must be one object. Runs only where
 * no run has been before.
 */
export function explore<T>(tree: Tree<T>, rows: ValueSet, how: Exploring<T>): void {
  if (rows !== noRows) visitGroups(groupsOf(tree, rows, how), rows, how);
}

/**
 * Grows the tree for every value that occurs at a fork's level anywhere in `rows`: a little more than is needed, so that
 * no set has to be cut up only to find that nothing is missing.
 */
export function groupsOf<T>(tree: Tree<T>, rows: ValueSet, how: Exploring<T>): Groups<T> {
  const cubes = new Map<T, Cube[]>();
  collect(tree, rows, how, new Map(), [], cubes);
  return [...cubes].sort(([, a], [, b]) => b.length - a.length);
}

/** The first outcome is given what the others leave: a gate that still lacks something is one outcome of many leaves. */
export function visitGroups<T>(
  [most, ...others]: Groups<T>,
  rows: ValueSet,
  { sets, dull, visit }: Pick<Exploring<T>, 'sets' | 'dull' | 'visit'>,
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
  rows: ValueSet,
  how: Exploring<T>,
  assumed: Map<string, Held>,
  cube: Cube,
  cubes: Map<T, Cube[]>,
): void {
  if (!tree.leaf && !tree.fork) grow(tree, rows, how, assumed);
  if (tree.leaf) {
    const leaves = cubes.get(tree.leaf.value) ?? [];
    leaves.push(cube);
    cubes.set(tree.leaf.value, leaves);
  }
  if (!tree.fork) return;
  const { name, ways } = tree.fork;
  const { level, values } = how.names.variable(name);
  for (const number of how.sets.valuesAt(rows, level)) {
    const held = values.at(number);
    const way = ways.get(held) ?? {};
    ways.set(held, way);
    assumed.set(name, held);
    collect(way, rows, how, assumed, [...cube, [level, number]], cubes);
  }
  assumed.delete(name);
}

/** One run: it grows the tree along the first values that occur. */
function grow<T>(
  tree: Tree<T>,
  rows: ValueSet,
  { sets, names, run }: Exploring<T>,
  assumed: ReadonlyMap<string, Held>,
): void {
  const known = new Map(assumed);
  let at = tree;
  const value = run((variable) => {
    const name = names.nameOf(variable);
    const old = known.get(name);
    if (old !== undefined) return variable.values.numberOf(old);
    const number = sets.valuesAt(rows, variable.level)[0] ?? 0;
    const held = variable.values.at(number);
    const way: Tree<T> = {};
    at.fork = { name, ways: new Map([[held, way]]) };
    at = way;
    known.set(name, held);
    return number;
  });
  at.leaf = { value };
}
