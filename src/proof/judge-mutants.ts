/** Proves each mutant of a flow: which are refused by the reader, which break a claim, and which live on. */

import {
  type Card,
  compileJob,
  type Flow,
  type FlowFile,
  type MachineKind,
  readFlowValue,
  resolveFlow,
} from '../flow/index.ts';
import { type Mutant, mutantsOf } from './mutants.ts';
import { prove } from './prove.ts';

export type Fate =
  /** The reader has a fault for it. */
  | 'refused'
  | 'broken'
  /** No claim of the flow changes; `why` says what makes it harmless. */
  | 'survives';

export interface JudgedMutant {
  readonly mutant: Mutant;
  readonly fate: Fate;
  /** The first broken claim, or the fault. */
  readonly why: string;
}

/** Judges all mutants, or those that `choose` takes. */
export function judgeMutants(
  flow: Flow,
  card: Card,
  choose: (mutant: Mutant) => boolean = () => true,
): readonly JudgedMutant[] {
  return mutantsOf(flow.file)
    .filter(choose)
    .map((mutant) => judgeMutant(mutant, flow.kind, card));
}

function judgeMutant(mutant: Mutant, kind: MachineKind, card: Card): JudgedMutant {
  const value: unknown = JSON.parse(JSON.stringify(mutant.file));
  const read = resolveFlow(readFlowValue('mutant', value), new Map([[kind.id, kind]]));
  if (!read.ok) return { mutant, fate: 'refused', why: read.faults[0]?.message ?? '' };
  const compiled = compileJob(read.flow, card);
  if (!compiled.ok) return { mutant, fate: 'refused', why: compiled.faults[0] ?? '' };
  const proof = prove(compiled.job, { paths: false });
  const [first] = proof.problems;
  if (first) return { mutant, fate: 'broken', why: `${first.claim} at step "${first.step}"` };
  if (proof.verdict !== 'proved')
    return { mutant, fate: 'broken', why: proof.reason ?? proof.verdict };
  return { mutant, fate: 'survives', why: harmless(mutant, read.flow.file) };
}

/** Why nothing changes when it is taken out; empty where nobody can say, and then a claim is missing. */
function harmless(mutant: Mutant, file: FlowFile): string {
  if (mutant.kind === 'remedy') {
    return 'A remedy is advice: without it the machine kind gives its own.';
  }
  return survivorReason(mutant, file);
}

/** Filled from what the shipped flows show; each reason is checked by a person, and listed with the score. */
function survivorReason({ kind, name, step, file }: Mutant, _: FlowFile): string {
  const now = file.steps.find((one) => one.id === step);
  if (kind === 'effect' && name.startsWith('hands')) {
    return 'Without hands near, the guard is not asked for anew until the next step with hands, which every cut has before it.';
  }
  if (kind === 'effect' && name.startsWith('moment')) {
    return 'A moment marks a step for a hazard that its gate keeps; the gate is still there.';
  }
  if (kind === 'condition' && now && !now.hands && now.kind !== 'cut' && now.kind !== 'passes') {
    return 'Nothing is near the machine in this step, and the next step with hands has its own gate.';
  }
  return '';
}
