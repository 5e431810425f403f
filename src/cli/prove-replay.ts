/** Plays one line of what was said through a flow, and tells what came of it. */

import { type Card, compileJob, type Flow, positionOf } from '../flow/index.ts';
import { playBack, toldAs } from '../proof/index.ts';

export type ReplayTold =
  | { readonly ok: true; readonly text: string }
  | { readonly ok: false; readonly fault: string };

export function replayFlow(flow: Flow, card: Card, line: string): ReplayTold {
  const compiled = compileJob(flow, card);
  if (!compiled.ok) return { ok: false, fault: compiled.faults.join(' ') };
  const { job } = compiled;
  const played = playBack(job, line);
  if (!played.ok) return played;
  const { step, phase } = positionOf(played.snapshot);
  const facts = Object.entries(played.snapshot.context.facts)
    .map(([fact, state]) => `${fact} ${state}`)
    .join(', ');
  const turns = toldAs(job, played.events).map(({ who, says }) => `${who}: ${says}`);
  return {
    ok: true,
    text: [...turns, `now: step "${step}", ${phase}`, `believed: ${facts}`].join('\n'),
  };
}
