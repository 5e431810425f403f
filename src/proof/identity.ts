/** What makes two snapshots the same to the plain walk. */

import type { FlowSnapshot } from '../flow/index.ts';

/**
 * All of a snapshot but two things. What the cross dial reads (`passes.dial`) grows with every pass, is only shown, and
 * no guard reads it: with it no loop of passes would ever close. The list of lost facts (`held.lost`) is only told.
 */
export function identityOf({ value, context }: FlowSnapshot): string {
  const { facts, held, speedSet, readings, passes } = context;
  const sizes = Object.entries(passes).map(([step, { size }]) => [step, size]);
  return JSON.stringify([value, facts, held?.to, held?.by, speedSet, readings, sizes]);
}
