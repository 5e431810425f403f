/** The pace of a run: how much is told. It can be changed at any moment and changes nothing else. Pure. */

import { type Pace, paces } from '../flow/index.ts';
import { apprenticeTexts, type Language, sayIn } from '../texts/index.ts';
import { entryOf } from './entry.ts';
import type { Heard, RunEntry } from './ports.ts';
import { presentLine } from './replies.ts';
import type { RunState, RunStep } from './run-state.ts';
import { viewNow } from './view-now.ts';

/** A pace by name, or one step to more or less. */
export type PaceWish = Pace | 'shorter' | 'longer';

const keys = { 'first-time': 'firstTime', familiar: 'familiar', 'own-pace': 'ownPace' } as const;

/** "Own pace." */
export function paceName(pace: Pace, language: Language): string {
  return sayIn(language, apprenticeTexts)(keys[pace]);
}

/** Kept, then told: fewer words need none, more words begin with the present line in full. */
export function takePace(state: RunState, heard: Heard, wish: PaceWish): RunStep {
  const pace = wished(state.pace, wish);
  const next: RunState = { ...state, pace, question: null, seq: state.seq + 1 };
  const line =
    pace === state.pace ? already(pace, state.job.flow.language) : changed(state.pace, next);
  const event = { type: 'pace', pace };
  const entry: RunEntry = { ...entryOf(state, heard, event, 'note'), said: line };
  return {
    state: next,
    effects: [
      { kind: 'append', entry },
      { kind: 'say', line, urgent: true },
    ],
  };
}

/** The pace that an entry of a run changed to, if it did. */
export function paceIn(event: RunEntry['event']): Pace | undefined {
  return event?.type === 'pace' ? paces.find((pace) => pace === event.pace) : undefined;
}

function wished(pace: Pace, wish: PaceWish): Pace {
  if (wish !== 'shorter' && wish !== 'longer') return wish;
  const at = paces.indexOf(pace) + (wish === 'shorter' ? 1 : -1);
  return paces[at] ?? pace;
}

function already(pace: Pace, language: Language): string {
  return sayIn(language, apprenticeTexts)('already', { pace: paceName(pace, language) });
}

function changed(was: Pace, next: RunState): string {
  const more = paces.indexOf(next.pace) < paces.indexOf(was);
  const name = `${paceName(next.pace, next.job.flow.language)}.`;
  return more ? `${name} ${presentLine(viewNow(next))}` : name;
}
