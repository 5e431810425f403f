/**
 * Walks every reachable situation of a compiled flow and judges the claims: proved, broken with the shortest path,
 * too large, or unseeable. Never guesses, never changes a flow, and never says "fine" of what it did not walk.
 */

export { type Claim, claimNamed, claimsOf, formatClaims, heardClaim } from './claims.ts';
export type { Counted, Coverage } from './coverage.ts';
export { excuseFor } from './excuse-mutant.ts';
export { type HuntLimits, hunt } from './hunt.ts';
export {
  hazardsMet,
  type JudgedEdit,
  type JudgedKindMutant,
  judgeKindMutants,
  whyUnmet,
} from './judge-kind-mutants.ts';
export { type Fate, huntMutant, type JudgedMutant, judgeMutants } from './judge-mutants.ts';
export { type KindMutant, kindMutantsOf } from './kind-mutants.ts';
export { Memory } from './memory.ts';
export { type Mutant, type MutantKind, mutantsOf } from './mutants.ts';
export type { Problem, Proof, Verdict, Walked, Watch } from './proof.ts';
export { type ProveOptions, prove } from './prove.ts';
export { type AdjustedProof, proveAdjusted, type TriedNumbers } from './prove-adjusted.ts';
export { type InputsProof, type NumbersProblem, proveInputs } from './prove-inputs.ts';
export {
  type ProofJob,
  type ProofJobResult,
  proveJob,
  type ToldProblem,
  type ToldProof,
} from './prove-job.ts';
export {
  playBack,
  type ReplayResult,
  replayLine,
  type Turn,
  toldAs,
} from './told.ts';
export { Cancelled } from './walk-limits.ts';
export { walkPlainly } from './walk-plain.ts';
