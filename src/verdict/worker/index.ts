/**
 * The prover in a thread of its own, so that the page goes on while it walks.
 * It never decides whether a job may be begun.
 */
export {};
