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
