/** Plays one line of what was said through a flow, and tells what came of it. */

import { type Card, compileJob, type Facts, type Flow, positionOf } from '../flow/index.ts';
import { playBack, type Turn, toldAs } from '../proof/index.ts';

export interface Replayed {
  readonly flow: string;
  readonly card: string;
  readonly turns: readonly Turn[];
  /** Where it stands then, and what is believed. */
  readonly step: string;
  readonly phase: string;
  readonly facts: Facts;
}

export type ReplayResult =
  | { readonly ok: true; readonly replayed: Replayed }
  | { readonly ok: false; readonly fault: string };

export function replayFlow(flow: Flow, card: Card, line: string): ReplayResult {
  const compiled = compileJob(flow, card);
  if (!compiled.ok) return { ok: false, fault: compiled.faults.join(' ') };
  const { job } = compiled;
  const played = playBack(job, line);
  if (!played.ok) return played;
  const { step, phase } = positionOf(played.snapshot);
  const turns = toldAs(job, played.events);
  const { facts } = played.snapshot.context;
  return { ok: true, replayed: { flow: flow.file.id, card: card.id, turns, step, phase, facts } };
}

export function tellReplay({ turns, step, phase, facts }: Replayed): string {
  const believed = Object.entries(facts).map(([fact, state]) => `${fact} ${state}`);
  return [
    ...turns.map(({ who, says }) => `${who}: ${says}`),
    `now: step "${step}", ${phase}`,
    `believed: ${believed.join(', ')}`,
  ].join('\n');
}
