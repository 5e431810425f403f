/** A flow whose first cut waits for an instructor, whatever the file says: one more condition, and nothing else changed. */

import type { Step } from './flow-shape.ts';
import { targetsOf } from './step-graph.ts';

/**
 * @param text a flow file that was read without a fault
 * @returns its text with `release` on every step that can be the first to run under power
 */
export function releaseFirst(text: string): string {
  const file = JSON.parse(text) as { readonly steps: readonly Step[] };
  const first = firstPowered(file.steps);
  const steps = file.steps.map((step) => (first.has(step.id) ? { ...step, release: true } : step));
  return JSON.stringify({ ...file, steps }, null, 2);
}

/** Powered steps that some path comes to before any other powered one. */
function firstPowered(steps: readonly Step[]): ReadonlySet<string> {
  const places = new Map(steps.map((step, index) => [step.id, index]));
  const first = new Set<string>();
  const seen = new Set([0]);
  for (const index of seen) {
    const step = steps[index];
    if (step?.kind === 'cut' || step?.kind === 'passes') {
      first.add(step.id);
      continue;
    }
    for (const target of targetsOf(steps, index)) {
      const place = places.get(target);
      if (place !== undefined) seen.add(place);
    }
  }
  return first;
}
