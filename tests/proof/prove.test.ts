import { describe, expect, it } from 'vitest';
import { tallyFlows } from './many-flows.ts';

/** FOLLOWREST_FLOWS=5000 walks more of them. */
const flows = Number(process.env.FOLLOWREST_FLOWS ?? 150);

describe('the reduced walk', () => {
  it(`breaks the same claims at the same steps as the plain one, by paths as short, on ${flows} random flows`, () => {
    const { proved, broken, differences } = tallyFlows(1787, flows, 300);
    expect(differences).toEqual([]);
    // Both kinds are many, so that neither walk gets by with one answer.
    expect(proved).toBeGreaterThan(flows / 8);
    expect(broken).toBeGreaterThan(flows / 8);
  }, 1_800_000);
});
