/**
 * What an ear of listed words hears at once, and what stands behind "other words" for it: questions and wishes that are
 * rare here. Pure.
 */

import { type Ask, positionOf } from '../flow/index.ts';
import { type LeadList, leadListOf, restList } from './lead-lists.ts';
import type { RunState } from './run-state.ts';
import type { BenchItem } from './said-now.ts';
import { viewNow } from './view-now.ts';
import { figureOfAsk } from './why-that.ts';

const always: readonly Ask[] = ['repeat', 'why', 'words'];
const figures: readonly Ask[] = ['speed', 'feed', 'depth', 'left'];

/** False for what counts at once, and for what has a lead word of its own. */
export function isRest(state: RunState, { kind, ask, opens, ...item }: BenchItem): boolean {
  if (kind !== 'ask') return false;
  if (ask !== undefined) return !isAskedHere(state, ask) && hasAnswer(state, ask);
  if (opens !== undefined) return opens !== restList && !isOpenedHere(state, opens);
  return leadListOf({ kind, ...item }) === undefined;
}

/** Questions that belong to this moment: its figures, and why the one just told is so. */
export function isAskedHere(state: RunState, ask: Ask): boolean {
  if (always.includes(ask)) return true;
  const { phase } = positionOf(state.snapshot);
  if (ask === 'whyThat') return state.told !== undefined;
  if (ask === 'trouble') return phase !== 'gate';
  if (!figures.includes(ask) || !hasAnswer(state, ask)) return false;
  return ask === 'speed' || phase === 'dial' || phase === 'cutting';
}

/** Where a dial is to be set the numbers are told: there they are worked out again by two words, elsewhere by three. */
export function isOpenedHere(state: RunState, list: LeadList): boolean {
  const works = list === 'speeds' || list.startsWith('input:');
  return works && positionOf(state.snapshot).phase === 'dial';
}

/** Where there is no such figure, nobody is heard asking for it. */
function hasAnswer(state: RunState, ask: Ask): boolean {
  return !figures.includes(ask) || figureOfAsk(ask, viewNow(state)) !== undefined;
}
