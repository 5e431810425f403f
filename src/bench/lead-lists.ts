/** Which list of rare words an item stands in. Pure. */

import type { BenchItem } from './said-now.ts';

/** "terms", "parts", "paces", "speeds", "input:material", or "rest". */
export type LeadList = string;

/** What is left: questions and wishes that are rare, and the lead words of the other lists. */
export const restList: LeadList = 'rest';

/** The list that an item stands in when it does not count by itself. */
export function leadListOf({ adjust, term, part, pace }: BenchItem): LeadList | undefined {
  if (adjust?.type === 'adjust') return `input:${adjust.input}`;
  if (adjust?.type === 'running') return adjust.toSet ? undefined : 'speeds';
  if (term !== undefined) return 'terms';
  if (part !== undefined) return 'parts';
  return pace ? 'paces' : undefined;
}
