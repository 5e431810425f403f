/** Begins a run in the logbook, or opens one that is there. */

import {
  beginRun,
  comeBack,
  type KeptRun,
  type RunHead,
  type RunSource,
  type RunStep,
  replayRun,
  startJob,
} from '../bench/index.ts';
import type { Logbook } from '../logbook/index.ts';
import type { Begun, CardEntry, RunChoice, ShelfEntry } from '../screens/world.ts';

/** Checks the numbers first: a run that a rule refuses is never begun. */
export async function beginInLogbook(
  choice: RunChoice,
  entry: ShelfEntry,
  card: CardEntry,
  logbook: Logbook,
  now: number,
): Promise<Begun> {
  const texts = { flow: entry.flow, kind: entry.kind, card: card.card };
  const started = startJob(texts, choice.inputs);
  if (!started.ok) return started;
  const source: RunSource = { key: await keyOf(texts), ...texts };
  const head: RunHead = {
    id: crypto.randomUUID(),
    flowId: entry.id,
    flowTitle: entry.title,
    flowVersion: entry.revision,
    sourceKey: source.key,
    operator: choice.operator,
    startedAt: now,
    status: 'open',
    inputs: started.job.numbers.inputs,
    cardId: card.id,
  };
  await logbook.start(head, source);
  return { ok: true, runId: head.id };
}

/** The same texts give the same key, so they are kept once for all their runs. */
async function keyOf(texts: Omit<RunSource, 'key'>): Promise<string> {
  const bytes = new TextEncoder().encode(JSON.stringify([texts.flow, texts.kind, texts.card]));
  const digest = await crypto.subtle.digest('SHA-256', bytes);
  return Array.from(new Uint8Array(digest), (byte) => byte.toString(16).padStart(2, '0')).join('');
}

export type Resumed =
  | { readonly ok: true; readonly step: RunStep; readonly resumed: boolean }
  | { readonly ok: false; readonly fault: string };

/** The run where it was left; when anything had been said before, it comes back through a hold. */
export function resumeKept(kept: KeptRun, now: number): Resumed {
  const started = startJob(kept.source, kept.head.inputs);
  if (!started.ok) return { ok: false, fault: started.faults.join(' ') };
  if (kept.entries.length === 0) {
    return { ok: true, step: beginRun(started.job, kept.head), resumed: false };
  }
  const replayed = replayRun(started.job, kept.head, kept.entries);
  if (!replayed.ok) return replayed;
  return { ok: true, step: comeBack(replayed.state, now), resumed: true };
}
