/** A careless edit of any shipped flow is found, and told so that a machinist understands it. */

import { beforeAll, describe, expect, it } from 'vitest';
import { readFlowAt, shippedCards, shippedFlows, shippedKinds } from '../../src/cli/flow-files.ts';
import type { Card, Flow, Job } from '../../src/flow/index.ts';
import {
  claimNamed,
  excuseFor,
  huntMutant,
  type JudgedMutant,
  mutantsOf,
  prove,
  toldAs,
} from '../../src/proof/index.ts';
import { foreignWords } from './plain-words.ts';

const kinds = shippedKinds();

function shipped(path: string): { flow: Flow; card: Card } {
  const read = readFlowAt(path, kinds);
  if (!read.ok) throw new Error(read.faults.map((fault) => fault.message).join('\n'));
  const card = shippedCards().find((one) => one.machineKind === read.flow.kind.id);
  if (!card) throw new Error(`No card for a ${read.flow.kind.id}.`);
  return { flow: read.flow, card };
}

/** A target that is taken out, and what only the walk of everything shows, is for `npm run prove -- --mutants`. */
function isLeftToTheWalk({ mutant, fate }: JudgedMutant): boolean {
  return fate === 'open' && mutant.kind === 'target';
}

const names = (list: readonly JudgedMutant[]) => list.map(({ mutant }) => mutant.name);

describe.each(shippedFlows())('%s', (path) => {
  const { flow, card } = shipped(path);
  let judged: readonly JudgedMutant[] = [];
  beforeAll(() => {
    judged = mutantsOf(flow.file).map((mutant) => huntMutant(mutant, flow.kind, card));
  }, 60_000);

  it('breaks a claim when any one condition is deleted', () => {
    const conditions = judged.filter(({ mutant }) => mutant.kind === 'condition');
    expect(names(conditions.filter(({ fate }) => fate === 'open'))).toEqual([]);
  });

  it('tells what is wrong in words of the trade, turn by turn', () => {
    const foreign = judged.flatMap(({ mutant, problem, job }) =>
      problem && job ? foreignWords(job, problem).map((word) => `${mutant.name}: ${word}`) : [],
    );
    expect(foreign).toEqual([]);
  });

  it('breaks a claim, or has a reason that was looked up, when an effect or a remedy is deleted', () => {
    const open = judged.filter((one) => one.fate === 'open' && !isLeftToTheWalk(one));
    const without = open.filter(({ mutant, job }) => !job || excuseFor(mutant, job) === '');
    expect(names(without)).toEqual([]);
  });
});

describe('the prover itself', () => {
  const { flow, card } = shipped('flows/gate-hinge-pin.json');

  function proveWithout(name: string): { job: Job; told: string; claims: readonly string[] } {
    const mutant = mutantsOf(flow.file).find((one) => one.name === name);
    const job = mutant && huntMutant(mutant, flow.kind, card).job;
    if (!job) throw new Error(`No mutant "${name}".`);
    const proof = prove(job);
    const [first] = proof.problems;
    const told = toldAs(job, first?.events ?? []).map(({ who, says }) => `${who}: ${says}`);
    return { job, told: told.join(' · '), claims: proof.problems.map(({ claim }) => claim) };
  }

  it('[LATHE-KEY] tells by the shortest way how a start is asked for with the key in', () => {
    const { job, told, claims } = proveWithout('condition "chuck-key" of gate "ready-to-start"');
    expect([...new Set(claims)]).toEqual(['LATHE-KEY']);
    expect(claimNamed(job, 'LATHE-KEY').sentence).toBe(
      'The spindle never runs with the key in the chuck.',
    );
    expect(told).toContain('you: key in');
    expect(told.endsWith('bench: Start the spindle. Say spindle running.')).toBe(true);
  }, 60_000);
});
