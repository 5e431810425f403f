/** Makes a job out of the texts it is kept as: flow, machine kind, machine card. */

import {
  compileJob,
  faultTextIn,
  type Job,
  type JobInputs,
  readCard,
  readFlow,
  readKind,
} from '../flow/index.ts';
import { englishLanguage, type Language } from '../texts/index.ts';
import type { RunSource } from './ports.ts';

export type StartResult =
  | { readonly ok: true; readonly job: Job }
  | { readonly ok: false; readonly faults: readonly string[] };

/** Reads, resolves and compiles; every fault is one sentence. */
export function startJob(
  source: Omit<RunSource, 'key'>,
  inputs: JobInputs,
  language: Language = englishLanguage,
): StartResult {
  const kind = readKind('machine kind', source.kind, language);
  if (!kind.ok) return { ok: false, faults: kind.faults.map(faultTextIn(language)) };
  const card = readCard('machine card', source.card, language);
  if (!card.ok) return { ok: false, faults: card.faults.map(faultTextIn(language)) };
  const flow = readFlow('flow', source.flow, new Map([[kind.value.id, kind.value]]), language);
  if (!flow.ok) return { ok: false, faults: flow.faults.map(faultTextIn(language)) };
  return compileJob(flow.flow, card.value, inputs);
}
