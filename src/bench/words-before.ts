/** What has to be said before a word, for an ear of listed words. Pure. */

import { commandSaid } from '../flow/index.ts';
import { leadListOf, restList } from './lead-lists.ts';
import { leadPhrases } from './lead-words.ts';
import { countsAtOnce } from './listen-for.ts';
import { isAskedHere, isOpenedHere } from './rest-words.ts';
import type { RunState } from './run-state.ts';
import type { BenchItem } from './said-now.ts';

/** One phrase each, in the order they are said; none where the word counts at once. */
export function wordsBefore(state: RunState, item: BenchItem): readonly string[] {
  if (state.hearsFreely || countsAtOnce(state, item)) return [];
  const rest = leadPhrases(state, restList).slice(0, 1);
  if (item.kind === 'trouble') {
    const trouble = commandSaid(state.job.flow.language, 'trouble');
    return [...(isAskedHere(state, 'trouble') ? [] : rest), trouble];
  }
  const list = leadListOf(item);
  if (list === undefined) return rest;
  return [...(isOpenedHere(state, list) ? [] : rest), ...leadPhrases(state, list).slice(0, 1)];
}
