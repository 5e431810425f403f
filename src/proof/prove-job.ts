/** What a worker of the page does with one question: reads the texts, proves, and tells the outcome as plain data. */

import {
  compileJob,
  faultText,
  type Job,
  type JobInputs,
  readCard,
  readFlow,
  readKind,
  releaseFirst,
} from '../flow/index.ts';
import type { Language } from '../texts/index.ts';
import { claimNamed } from './claims.ts';
import type { Problem, Proof, Verdict, Watch } from './proof.ts';
import { prove } from './prove.ts';
import { toldAs } from './told.ts';

/** A job as it is kept: three JSON texts and the numbers of the piece, in base units. */
export interface ProofJob {
  readonly flow: string;
  readonly kind: string;
  readonly card: string;
  readonly inputs: JobInputs;
  /** That of the texts; English where it is left out. */
  readonly language?: Language;
  /** The job is begun with an instructor's release before its first cut, whatever the flow says. */
  readonly releaseFirst?: boolean;
}

/** One broken claim, for a person. */
export interface ToldProblem {
  readonly claim: string;
  readonly sentence: string;
  /** The title of the step; empty for the end of the job. */
  readonly step: string;
  readonly message: string;
  /** The shortest way there, in the words of both sides; none for what needs no way. */
  readonly turns: readonly { readonly who: 'you' | 'bench'; readonly says: string }[];
}

export interface ToldProof {
  readonly verdict: Verdict;
  /** For too large and unseeable: the limit, or what was looked at. */
  readonly reason: string;
  readonly problems: readonly ToldProblem[];
  readonly states: number;
}

export type ProofJobResult =
  | { readonly ok: true; readonly proof: ToldProof }
  /** The texts cannot be read, or the numbers not be worked out: one sentence each. */
  | { readonly ok: false; readonly faults: readonly string[] };

/** Throws `Cancelled` when `watch` says so; everything else is a result. */
export function proveJob(asked: ProofJob, watch: Watch = {}): ProofJobResult {
  const read = jobOf(asked);
  return read.ok ? { ok: true, proof: toldProof(read.job, prove(read.job, watch)) } : read;
}

type JobRead =
  | { readonly ok: true; readonly job: Job }
  | { readonly ok: false; readonly faults: readonly string[] };

function jobOf(texts: ProofJob): JobRead {
  const { language } = texts;
  const kind = readKind('machine kind', texts.kind, language);
  if (!kind.ok) return { ok: false, faults: kind.faults.map(faultText) };
  const card = readCard('machine card', texts.card);
  if (!card.ok) return { ok: false, faults: card.faults.map(faultText) };
  const kinds = new Map([[kind.value.id, kind.value]]);
  const flow = readFlow('flow', texts.flow, kinds, language);
  if (!flow.ok) return { ok: false, faults: flow.faults.map(faultText) };
  if (!texts.releaseFirst) return compileJob(flow.flow, card.value, texts.inputs);
  const released = readFlow('flow', releaseFirst(texts.flow), kinds, language);
  if (!released.ok) return { ok: false, faults: released.faults.map(faultText) };
  return compileJob(released.flow, card.value, texts.inputs);
}

function toldProof(job: Job, { verdict, reason = '', problems, states }: Proof): ToldProof {
  return {
    verdict,
    reason,
    states,
    problems: problems.map((problem) => toldProblem(job, problem)),
  };
}

function toldProblem(job: Job, { claim, step, message, events }: Problem): ToldProblem {
  const { sentence } = claimNamed(job, claim);
  const title = job.flow.steps.get(step)?.title ?? '';
  return { claim, sentence, step: title, message, turns: events ? toldAs(job, events) : [] };
}
