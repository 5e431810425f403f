/** Judges each mutant of a flow: which are refused by the reader, which break a claim, and which live on, and why. */

import {
  type Card,
  compileJob,
  type Flow,
  type Job,
  type MachineKind,
  readFlowValue,
  resolveFlow,
} from '../flow/index.ts';
import { excuseFor } from './excuse-mutant.ts';
import { hunt } from './hunt.ts';
import { judgePlans, judgeReleases } from './judge-plans.ts';
import { findPassedLimit } from './limit-mutants.ts';
import { Memory } from './memory.ts';
import { type Mutant, mutantsOf } from './mutants.ts';
import type { Problem } from './proof.ts';
import { prove } from './prove.ts';

export type Fate =
  /** The reader has a fault for it. */
  | 'refused'
  | 'broken'
  /** Every claim still holds; `why` says what makes it harmless, and is empty where nothing does. */
  | 'survives'
  /** It was not found out in time, or too large: nothing is said of it. */
  | 'open';

export interface JudgedMutant {
  readonly mutant: Mutant;
  readonly fate: Fate;
  /** The fault, what is wrong, or why it is harmless. */
  readonly why: string;
  /** The first broken claim, with the words that lead to it where it has a path. */
  readonly problem?: Problem;
  readonly job?: Job;
}

/** Judges all mutants, or those that `choose` takes, one at a time as they are asked for. */
export function* judgeMutants(
  flow: Flow,
  card: Card,
  choose: (mutant: Mutant) => boolean = () => true,
): Generator<JudgedMutant> {
  const memory = new Memory();
  for (const mutant of mutantsOf(flow.file)) {
    if (choose(mutant)) yield judgeMutant(mutant, flow.kind, card, memory);
  }
}

/**
 * What can be seen without a walk is looked for first: a broken claim is broken, however it was found. Only where
 * nothing was found everything is walked.
 */
function judgeMutant(mutant: Mutant, kind: MachineKind, card: Card, memory: Memory): JudgedMutant {
  const quick = huntMutant(mutant, kind, card);
  if (quick.fate !== 'open' || !quick.job) return quick;
  const { job } = quick;
  const proof = prove(job, { paths: false, memory });
  const [problem] = proof.problems;
  if (problem) return { mutant, fate: 'broken', why: problem.message, problem, job };
  if (proof.verdict !== 'proved') return { ...quick, why: proof.reason ?? proof.verdict };
  return { mutant, fate: 'survives', why: excuseFor(mutant, job), job };
}

/** Refused, or broken by what a hunt finds in a moment; else `open`: the walk has still to tell. */
export function huntMutant(mutant: Mutant, kind: MachineKind, card: Card): JudgedMutant {
  const value: unknown = JSON.parse(JSON.stringify(mutant.file));
  const read = resolveFlow(readFlowValue('mutant', value), new Map([[kind.id, kind]]));
  if (!read.ok) return { mutant, fate: 'refused', why: read.faults[0]?.message ?? '' };
  const compiled = compileJob(read.flow, card);
  if (!compiled.ok) return { mutant, fate: 'refused', why: compiled.faults[0] ?? '' };
  const { job } = compiled;
  if (mutant.kind === 'limit') return huntLimit(mutant, job);
  const released = mutant.release === undefined ? [] : judgeReleases(job, [mutant.release]);
  const [written] = [...judgePlans(job), ...released];
  const problem = hunt(job, mutant.steps) ?? written;
  if (problem) return { mutant, fate: 'broken', why: problem.message, problem, job };
  return { mutant, fate: 'open', why: '', job };
}

/** A limit counts with some numbers of the piece and not with others: those are looked for where it does. */
function huntLimit(mutant: Mutant, job: Job): JudgedMutant {
  const { passed, step } = findPassedLimit(job.flow, job.card, mutant.steps);
  const made = passed && compileJob(job.flow, job.card, passed);
  const problem = made?.ok && step !== undefined ? hunt(made.job, [step]) : undefined;
  if (!problem || !made?.ok) return { mutant, fate: 'open', why: '', job };
  return { mutant, fate: 'broken', why: problem.message, problem, job: made.job };
}
