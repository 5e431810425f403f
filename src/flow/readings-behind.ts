/** The readings a value is worked out from, through any number of workings. */

import type { Scope } from './scope.ts';
import type { ValueRef } from './words-shape.ts';

type Known = Map<string, readonly string[]>;

/** Asked at every figure and every step, so each working of a flow is followed once. */
const known = new WeakMap<Scope, Known>();

/** The names of all readings behind a value, each once. */
export function readingsBehind(ref: ValueRef, scope: Scope): readonly string[] {
  if ('reading' in ref) return scope.readings.has(ref.reading) ? [ref.reading] : [];
  if (!('working' in ref)) return [];
  const found = known.get(scope) ?? new Map<string, readonly string[]>();
  known.set(scope, found);
  return behindWorking(ref.working, scope, found);
}

function behindWorking(id: string, scope: Scope, found: Known): readonly string[] {
  const old = found.get(id);
  if (old) return old;
  // Set before going on: workings in a circle are a fault of the flow, not a walk without end.
  found.set(id, []);
  const given = Object.values(scope.workings.get(id)?.given ?? {});
  const readings = new Set(given.flatMap((ref) => behind(ref, scope, found)));
  found.set(id, [...readings]);
  return [...readings];
}

function behind(ref: ValueRef, scope: Scope, found: Known): readonly string[] {
  return 'working' in ref ? behindWorking(ref.working, scope, found) : readingsBehind(ref, scope);
}
