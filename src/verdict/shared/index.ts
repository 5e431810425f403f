/**
 * The messages between the page and the worker that proves flows.
 * It proves nothing and starts nothing.
 */
export type { FromProver, ToProver } from './messages.ts';
