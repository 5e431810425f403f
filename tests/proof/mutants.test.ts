/** A careless edit of any shipped flow is found, and told so that a machinist understands it. */

import { beforeAll, describe, expect, it } from 'vitest';
import { readFlowAt, shippedCards, shippedFlows, shippedKinds } from '../../src/cli/flow-files.ts';
import type { Card, Flow, Job } from '../../src/flow/index.ts';
import {
  claimNamed,
  excuseFor,
  hazardsMet,
  huntMutant,
  type JudgedEdit,
  type JudgedMutant,
  judgeKindMutants,
  mutantsOf,
  prove,
  toldAs,
  whyUnmet,
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

/** All that was judged, for the mutants of the kinds. */
const edits: JudgedEdit[] = [];

const unexplained = ({ mutant, fate, job }: JudgedMutant) =>
  fate === 'open' && (!job || excuseFor(mutant, job) === '');

const names = (list: readonly JudgedMutant[]) => list.map(({ mutant }) => mutant.name);

describe.each(shippedFlows())('%s', (path) => {
  const { flow, card } = shipped(path);
  let judged: readonly JudgedMutant[] = [];
  beforeAll(() => {
    judged = mutantsOf(flow.file).map((mutant) => huntMutant(mutant, flow.kind, card));
    edits.push(...judged.map((one) => ({ flow, judged: one })));
  }, 300_000);

  it('breaks a claim when a speed is no longer held to a limit, or has a reason that was looked up', () => {
    const limits = judged.filter(({ mutant }) => mutant.kind === 'limit');
    expect(names(limits.filter(unexplained))).toEqual([]);
  });

  it('breaks a claim when any one condition is deleted, or has a reason that was looked up why it does not count', () => {
    const conditions = judged.filter(({ mutant }) => mutant.kind === 'condition');
    expect(conditions.length).toBeGreaterThan(10);
    expect(names(conditions.filter(unexplained))).toEqual([]);
  });

  it('tells what is wrong in words of the trade, turn by turn', () => {
    const foreign = judged.flatMap(({ mutant, problem, job }) =>
      problem && job ? foreignWords(job, problem).map((word) => `${mutant.name}: ${word}`) : [],
    );
    expect(foreign).toEqual([]);
  });

  it('breaks a claim, or has a reason that was looked up, when an effect or a remedy is deleted', () => {
    const open = judged.filter((one) => !isLeftToTheWalk(one) && unexplained(one));
    expect(names(open)).toEqual([]);
  });
});

const ofFlows = shippedFlows().map((path) => shipped(path));

describe.each([...kinds.values()])('$id', (kind) => {
  const own = ofFlows.filter(({ flow }) => flow.file.machineKind === kind.id);
  const card = shippedCards().find((one) => one.machineKind === kind.id);
  const known = () => {
    if (!card) throw new Error(`No card for a ${kind.id}.`);
    const judged = edits.filter(({ flow }) => flow.file.machineKind === kind.id);
    return { kind, card, flows: own.map(({ flow }) => flow), edits: judged };
  };

  it('breaks a claim when a loss, a question of a fault walk, what it begins or what hands undo is deleted', () => {
    const noticed = ['loss', 'begin', 'ask', 'forget', 'remedy'];
    const judged = [...judgeKindMutants(known(), (mutant) => noticed.includes(mutant.kind))];
    const missed = judged.filter(({ fate, why }) => fate === 'open' || why === '');
    expect(judged.length).toBeGreaterThan(kind.facts.length);
    expect(missed.map(({ mutant }) => mutant.name)).toEqual([]);
  }, 60_000);

  it('has a careless edit that meets each hazard, or a reason that was looked up why none can', () => {
    const met = new Set(known().edits.flatMap(({ judged }) => hazardsMet(judged)));
    const unmet = kind.hazards.filter(({ id }) => !met.has(id) && whyUnmet(known(), id) === '');
    expect(unmet.map(({ id }) => id)).toEqual([]);
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
