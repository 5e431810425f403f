/**
 * Asks for the proof of a job beside the page, and can stop asking.
 * It never begins a job, and takes nothing for proved that was not walked to its end.
 */
export { ProofDesk, type ProofState, type ProofWorld, type Prover } from './proof-desk.ts';
export { startProver } from './start-prover.ts';
