import { describe, expect, it } from 'vitest';
import type { RunHead, RunTally } from '../../../src/bench/index.ts';
import { competenceCsv, competenceOf } from '../../../src/screens/people/competence.ts';
import { sampleRun } from '../../logbook/sample-run.ts';

const none: RunTally = {
  ...{ unclear: 0, refused: 0, within: 0, rework: 0, lost: 0, notes: 0, releases: [] },
};
const run = (more: Partial<RunHead>, tally: Partial<RunTally> = {}): RunHead => ({
  ...sampleRun('x').head,
  ...more,
  ...(more.status === 'open' ? {} : { tally: { ...none, ...tally } }),
});

const sheet = competenceOf([
  run({ pace: 'familiar', startedAt: 300 }, { within: 2, lost: 1, unclear: 4 }),
  run({ pace: 'first-time', startedAt: 100 }, { within: 1, refused: 3, releases: ['Ruth'] }),
  run(
    { pace: 'first-time', startedAt: 200, status: 'given-up' },
    { rework: 1, releases: ['Ruth'] },
  ),
  run({ flowId: 'plate', flowTitle: '=Plate, "thin"', startedAt: 900, status: 'open' }),
]);

describe('the sheet of an operator', () => {
  it('has one row a flow and pace: the latest flow first, the first pace first', () => {
    expect(sheet.rows.map(({ flowId, pace }) => [flowId, pace])).toEqual([
      ['plate', null],
      ['gate-hinge-pin', 'first-time'],
      ['gate-hinge-pin', 'familiar'],
    ]);
  });

  it('counts runs by their ending, and what was misheard, refused and in tolerance', () => {
    expect(sheet.rows[1]?.counts).toEqual({
      ...{ runs: 2, finished: 1, givenUp: 1, open: 0, last: 200, misheard: 0, refused: 3 },
      ...{ within: 1, judged: 2, releases: ['Ruth'] },
    });
    expect(sheet.all).toEqual({
      ...{ runs: 4, finished: 2, givenUp: 1, open: 1, last: 900, misheard: 4, refused: 3 },
      ...{ within: 3, judged: 5, releases: ['Ruth'] },
    });
  });

  it('is empty for nobody', () => {
    expect(competenceOf([])).toMatchObject({ rows: [], all: { runs: 0, last: 0 } });
  });

  it('is a table that a spreadsheet opens and takes no formula from', () => {
    const [names, first, second] = competenceCsv('Ida', sheet).split('\r\n');
    expect(names?.split(',').slice(0, 3)).toEqual(['operator', 'flow', 'pace']);
    expect(first).toContain(`Ida,"'=Plate, ""thin""",,1,0,0,1,1970-01-01T00:00:00.900Z`);
    expect(second).toBe(
      'Ida,Gate hinge pin,first-time,2,1,1,0,1970-01-01T00:00:00.200Z,0,3,1,2,Ruth',
    );
  });
});
