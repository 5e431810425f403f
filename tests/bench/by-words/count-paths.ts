/** How many simple paths a step's chart has from one of its states, counted by itself and not by the model-based tool. */

import type { ChartArrow } from './step-chart.ts';

/** More are not told apart: a table that says so many has made its point. */
const mostCounted = 200_000;

/** Paths on which no state comes twice and that can go no further so; beginnings of longer ones are not counted. */
export function countPaths(first: string, arrows: readonly ChartArrow[]): number {
  const after = new Map<string, string[]>();
  for (const { from, to } of arrows) after.set(from, [...(after.get(from) ?? []), to]);
  const seen = new Set([first]);
  const count = (state: string, left: number): number => {
    const next = (after.get(state) ?? []).filter((to) => !seen.has(to));
    if (next.length === 0) return 1;
    let sum = 0;
    for (const to of next) {
      if (sum >= left) break;
      seen.add(to);
      sum += count(to, left - sum);
      seen.delete(to);
    }
    return sum;
  };
  return count(first, mostCounted);
}

/** True where a path goes on until every next state has been on it. */
export function isWhole(
  names: readonly string[],
  arrows: readonly ChartArrow[],
  first: string,
): boolean {
  const taken = names.flatMap((name) => arrows.filter((arrow) => arrow.name === name));
  const seen = new Set([first, ...taken.map(({ to }) => to)]);
  const end = taken.at(-1)?.to ?? first;
  const simple = seen.size === taken.length + 1;
  return simple && arrows.every(({ from, to }) => from !== end || seen.has(to));
}
