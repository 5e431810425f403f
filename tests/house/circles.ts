/** Finds circles: files that need each other's values when loaded, or rooms that see each other. */

import { posix } from 'node:path';
import { importsOf } from './imports.ts';
import type { Sources } from './judge-imports.ts';
import { ROOMS } from './rooms.ts';

type Needs = ReadonlyMap<string, readonly string[]>;

/** Types may refer to each other, since they are gone when the program runs; values may not. */
export function circlesOfFiles(sources: Sources): readonly string[] {
  return circles(
    new Map(Object.entries(sources).map(([path, text]) => [path, valuesNeeded(path, text)])),
  );
}

/** Circles in the table itself. */
export function circlesOfRooms(): readonly string[] {
  return circles(new Map(ROOMS.map((room) => [room.name, Object.keys(room.sees)])));
}

/** Each circle as a chain, "a → b → a". */
function circles(needs: Needs): readonly string[] {
  const done = new Set<string>();
  const found: string[] = [];
  const visit = (name: string, chain: readonly string[]): void => {
    const since = chain.indexOf(name);
    if (since >= 0) found.push([...chain.slice(since), name].join(' → '));
    if (since >= 0 || done.has(name)) return;
    for (const next of needs.get(name) ?? []) visit(next, [...chain, name]);
    done.add(name);
  };
  for (const name of needs.keys()) visit(name, []);
  return found;
}

function valuesNeeded(path: string, text: string): readonly string[] {
  return importsOf(path, text)
    .filter((one) => one.reach === 'values' && one.from.startsWith('.'))
    .map((one) => posix.join(posix.dirname(path), one.from));
}
