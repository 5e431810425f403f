/** Trees that were grown for all values that can occur at a spot, and are so for every spot where the same values can. */

import { type Groups, type Growing, groupsOf, type Tree } from './tree.ts';

/** A tree that many spots share, with what it was grown to so far. */
export interface SharedTree<T> {
  readonly tree: Tree<T>;
  readonly grown: Grown<T>[];
}

/** What it comes to for the values at the levels that were looked at; nothing else counts. */
export interface Grown<T> {
  readonly looked: ReadonlyMap<
    string,
    { readonly level: number; readonly values: readonly number[] }
  >;
  readonly groups: Groups<T>;
}

export function newShared<T>(): SharedTree<T> {
  return { tree: {}, grown: [] };
}

/** Equal lists of values are one object (domain.ts). */
export function isGrownFor<T>(
  { looked }: Grown<T>,
  { names, valuesAt }: Pick<Growing<T>, 'names' | 'valuesAt'>,
): boolean {
  for (const [name, { level, values }] of looked) {
    if (names.variable(name).level !== level || valuesAt(level) !== values) return false;
  }
  return true;
}

export function grownFor<T>({ tree, grown }: SharedTree<T>, how: Growing<T>): Grown<T> {
  const old = grown.find((one) => isGrownFor(one, how));
  if (old) return old;
  const looked = new Map<string, { level: number; values: readonly number[] }>();
  const variable = (name: string) => {
    const found = how.names.variable(name);
    looked.set(name, { level: found.level, values: how.valuesAt(found.level) });
    return found;
  };
  const names = {
    variable,
    nameOf: (one: Parameters<typeof how.names.nameOf>[0]) => how.names.nameOf(one),
  };
  const made = { looked, groups: groupsOf(tree, { ...how, names }) };
  grown.push(made);
  return made;
}
