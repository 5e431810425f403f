import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { RunHead } from '../../../src/bench/index.ts';
import { batchSizes, numberOf, piecesOf } from '../../../src/screens/logbook/batches.ts';
import {
  ALL_RUNS,
  findRuns,
  isForAll,
  shelve,
  type Wanted,
} from '../../../src/screens/logbook/find-runs.ts';
import { englishLanguage } from '../../../src/texts/index.ts';
import { sampleRun } from '../../logbook/sample-run.ts';

const day = (text: string) => new Date(`${text}T12:00:00`).getTime();
const run = (id: string, more: Partial<RunHead> = {}): RunHead => ({
  ...sampleRun(id).head,
  ...more,
});

const runs = [
  run('a', { operator: 'Ida', operatorId: 'op-1', startedAt: day('2026-11-25') }),
  run('b', { operator: 'Ruth', operatorId: 'op-2', startedAt: day('2026-11-24') }),
  run('c', {
    ...{ operator: 'Ida Weber', operatorId: 'op-1', startedAt: day('2026-10-02') },
    ...{ flowId: 'drill-plate', flowTitle: 'Drill a plate', status: 'given-up' },
    ...{ inputs: { diameter: 8.5, material: 'brass' }, batch: { id: 'x', piece: 3 } },
  }),
];
const found = (wanted: Partial<Wanted>) =>
  findRuns(shelve(runs, englishLanguage), { ...ALL_RUNS, ...wanted }).map(({ id }) => id);

describe('runs are found', () => {
  it.each([
    ['all, when nothing is asked', {}, ['a', 'b', 'c']],
    ['by every word of the text', { text: 'HINGE ruth' }, ['b']],
    ['by their ending', { text: 'given' }, ['c']],
    ['by an ISO day in the text', { text: '2026-11' }, ['a', 'b']],
    ['by operator, under a new name too', { operator: 'op-1' }, ['a', 'c']],
    ['by the name, where it is all there is', { operator: 'Ruth' }, ['b']],
    ['by flow', { flow: 'drill-plate' }, ['c']],
    ['from a day on', { from: '2026-11-24' }, ['a', 'b']],
    ['until a day, with it', { until: '2026-11-24' }, ['b', 'c']],
    ['within days', { from: '2026-11-24', until: '2026-11-24' }, ['b']],
    ['by a number of the piece', { piece: '8.5' }, ['c']],
    ['by a word of the piece', { piece: 'brass' }, ['c']],
    ['by the number in a batch', { piece: 'piece 3' }, ['c']],
    ['by nothing that is not there', { text: 'gear' }, []],
  ] as const)('%s', (_how, wanted, ids) => {
    expect(found(wanted)).toEqual(ids);
  });

  it('all without a search only where nothing at all is asked', () => {
    expect(isForAll(ALL_RUNS)).toBe(true);
    for (const name of Object.keys(ALL_RUNS)) {
      expect([name, isForAll({ ...ALL_RUNS, [name]: 'x' })]).toEqual([name, false]);
    }
  });

  it('in any case when each question is narrowed by words of the run itself', () => {
    fc.assert(
      fc.property(fc.nat({ max: 2 }), fc.nat({ max: 10 }), (which, from) => {
        const head = runs[which];
        if (!head) return;
        const text = head.flowTitle.slice(from % head.flowTitle.length).trim();
        expect(found({ text: `${text} ${head.operator}` })).toContain(head.id);
      }),
      { seed: 5 },
    );
  });
});

describe('a batch', () => {
  const pieces = [
    run('third', { batch: { id: 'first', piece: 3 } }),
    run('first'),
    run('second', { batch: { id: 'first', piece: 2 } }),
    run('alone'),
  ];

  it('is its first run and those that name it, in the order of their numbers', () => {
    expect(piecesOf(pieces, 'first').map((one) => [one.id, numberOf(one)])).toEqual([
      ['first', 1],
      ['second', 2],
      ['third', 3],
    ]);
  });

  it('is counted only where there is more than one piece', () => {
    expect([...batchSizes(pieces)]).toEqual([['first', 3]]);
  });
});
