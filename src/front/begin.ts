/** Begins a run in the logbook, or opens one that is there. */

import {
  beginRun,
  comeBack,
  type KeptRun,
  type PieceOfBatch,
  type ReleaseCheck,
  type RunHead,
  type RunSource,
  type RunStep,
  releaseIn,
  replayRun,
  startJob,
} from '../bench/index.ts';
import { releaseFirst } from '../flow/index.ts';
import type { Logbook } from '../logbook/index.ts';
import type { ProofJob } from '../proof/index.ts';
import type { CardEntry, Operator, RunChoice, ShelfEntry } from '../screens/world.ts';
import { englishLanguage, frontTexts, type Language, proofTexts, sayIn } from '../texts/index.ts';
import { loadLanguage } from './language.ts';
import { proofJobOf } from './proof-job.ts';

/** What a run is begun with beside the choice. */
export interface BeginWorld {
  readonly entry: ShelfEntry;
  readonly card: CardEntry;
  readonly operator: Pick<Operator, 'id' | 'name'>;
  readonly logbook: Pick<Logbook, 'start' | 'list'>;
  readonly now: number;
  /** What is not proved is not begun. */
  readonly isProved: (job: ProofJob) => Promise<boolean>;
  /** The texts of the entry are in it. */
  readonly language?: Language;
}

export type BegunInLogbook =
  | { readonly ok: true; readonly head: RunHead }
  | { readonly ok: false; readonly faults: readonly string[] };

/** Checks the numbers first, and has every path walked: a run that a rule refuses, or that is not proved, never begins. */
export async function beginInLogbook(
  choice: RunChoice,
  { entry, card, operator, logbook, now, isProved, language = englishLanguage }: BeginWorld,
): Promise<BegunInLogbook> {
  const flow = choice.releaseFirst ? releaseFirst(entry.flow) : entry.flow;
  const texts = { flow, kind: entry.kind, card: card.card };
  const started = startJob(texts, choice.inputs, language);
  if (!started.ok) return started;
  if (!(await isProved(proofJobOf(choice, entry, card, language)))) {
    return { ok: false, faults: [sayIn(language, proofTexts)('notProved')] };
  }
  const source: RunSource = { key: await sourceKey(texts), ...texts };
  const batch = await nextOfBatch(choice.batchOf, logbook);
  const head: RunHead = {
    id: crypto.randomUUID(),
    flowId: entry.id,
    flowTitle: entry.title,
    flowVersion: entry.revision,
    sourceKey: source.key,
    operator: operator.name,
    operatorId: operator.id,
    ...(choice.pace ? { pace: choice.pace } : {}),
    ...(language.spoken ? { language: language.code } : {}),
    ...(batch ? { batch } : {}),
    startedAt: now,
    status: 'open',
    inputs: started.job.numbers.inputs,
    cardId: card.id,
  };
  await logbook.start(head, source);
  return { ok: true, head };
}

/** The batch is named by its first run; a piece that was given up has its number all the same. */
async function nextOfBatch(
  run: string | undefined,
  logbook: Pick<Logbook, 'list'>,
): Promise<PieceOfBatch | undefined> {
  if (run === undefined) return undefined;
  const heads = await logbook.list();
  const like = heads.find((head) => head.id === run);
  if (!like) return undefined;
  const id = like.batch?.id ?? like.id;
  const numbers = heads.flatMap(({ batch }) => (batch?.id === id ? [batch.piece] : []));
  return { id, piece: Math.max(1, ...numbers) + 1 };
}

/** The same texts give the same key, so they are kept once for all their runs. */
export async function sourceKey(texts: Omit<RunSource, 'key'>): Promise<string> {
  const bytes = new TextEncoder().encode(JSON.stringify([texts.flow, texts.kind, texts.card]));
  const digest = await crypto.subtle.digest('SHA-256', bytes);
  return Array.from(new Uint8Array(digest), (byte) => byte.toString(16).padStart(2, '0')).join('');
}

export type Resumed =
  | { readonly ok: true; readonly step: RunStep; readonly resumed: boolean }
  | { readonly ok: false; readonly fault: string };

/**
 * The run where it was left; when anything had been said before, it comes back through a hold. A run with a release that
 * this device did not seal is not led on: it may have been written by hand. Nor is one whose flow is not the text that it
 * was begun with: a condition may have been taken out.
 */
export async function resumeKept(
  kept: KeptRun,
  now: number,
  releases: ReleaseCheck,
  /** Of the page, where a run that does not open is told of. */
  pages: Language = englishLanguage,
): Promise<Resumed> {
  if (!(await allGenuine(kept, releases))) {
    return { ok: false, fault: sayIn(pages, frontTexts)('strangeRelease') };
  }
  if ((await sourceKey(kept.source)) !== kept.head.sourceKey) {
    return { ok: false, fault: sayIn(pages, frontTexts)('strangeSource') };
  }
  const language = await loadLanguage(kept.head.language);
  const started = startJob(kept.source, kept.head.inputs, language);
  if (!started.ok) return { ok: false, fault: started.faults.join(' ') };
  if (kept.entries.length === 0) {
    return { ok: true, step: beginRun(started.job, kept.head), resumed: false };
  }
  const replayed = replayRun(started.job, kept.head, kept.entries);
  if (!replayed.ok) return replayed;
  return { ok: true, step: comeBack(replayed.state, now), resumed: true };
}

/** Every release in the record has a seal of this device, each seal once. */
export async function allGenuine(
  { entries }: Pick<KeptRun, 'entries'>,
  releases: ReleaseCheck,
): Promise<boolean> {
  const made = entries.flatMap((entry) => releaseIn(entry) ?? []);
  if (new Set(made.map(({ seal }) => seal)).size < made.length) return false;
  const genuine = await Promise.all(made.map((release) => releases.genuine(release)));
  return !genuine.includes(false);
}
