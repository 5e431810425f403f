/** Holds the two walks against each other on as many random flows as are asked for, and counts what came. */

import fc from 'fast-check';
import { Memory } from '../../src/proof/index.ts';
import { compare, latheCards } from './both-walks.ts';
import { randomFlow } from './random-flow.ts';

export interface Tally {
  readonly proved: number;
  readonly broken: number;
  readonly refused: number;
  readonly tooLarge: number;
  /** Both walks as text, where they differ; with the flow. */
  readonly differences: readonly string[];
}

/** `most`: situations that the plain walk may take. One memory is kept over all flows, and the cards take turns. */
export function tallyFlows(seed: number, flows: number, most: number): Tally {
  const memory = new Memory();
  const outcomes = fc.sample(randomFlow, { seed, numRuns: flows }).map((flow, at) => {
    const card = latheCards[at % latheCards.length];
    return { flow, outcome: compare(flow, most, memory, card) };
  });
  const count = (is: (one: (typeof outcomes)[number]['outcome']) => boolean) =>
    outcomes.filter(({ outcome }) => is(outcome)).length;
  return {
    proved: count((one) => 'same' in one && one.same === 'proved'),
    broken: count((one) => 'same' in one && one.same === 'broken'),
    refused: count((one) => 'left' in one && one.left === 'refused'),
    tooLarge: count((one) => 'left' in one && one.left !== 'refused'),
    differences: outcomes.flatMap(({ flow, outcome }) =>
      'differs' in outcome ? [`${outcome.differs}\n${JSON.stringify(flow)}`] : [],
    ),
  };
}
