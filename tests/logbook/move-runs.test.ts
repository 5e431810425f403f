import { describe, expect, it } from 'vitest';
import type { KeptRun } from '../../src/bench/ports.ts';
import { allRows, freshLogbook, putRaw } from './fresh-store.ts';
import { entry, sampleRun } from './sample-run.ts';

function fileOf(...runs: readonly unknown[]): string {
  return JSON.stringify({ followrest: 'logbook', version: 1, runs });
}

describe('runs in a file', () => {
  it('are the same on another device', async () => {
    const first = await freshLogbook();
    const text = fileOf(sampleRun('run-1'), sampleRun('run-2'));
    expect(await first.logbook.importRuns(text)).toEqual({ ok: true, added: 2, alreadyHere: 0 });
    const rows = await allRows();
    const exported = await first.logbook.exportRuns();
    expect(exported).toMatchObject({ runs: 2, left: [] });

    const second = await freshLogbook();
    await second.logbook.importRuns(exported.text);
    expect(await allRows()).toEqual(rows);
    expect(await second.logbook.read('run-1')).toEqual(sampleRun('run-1'));
  });

  it('are taken once', async () => {
    const { logbook } = await freshLogbook();
    await logbook.importRuns(fileOf(sampleRun('run-1')));
    const again = await logbook.importRuns(fileOf(sampleRun('run-1'), sampleRun('run-2')));
    expect(again).toEqual({ ok: true, added: 1, alreadyHere: 1 });
  });

  it('can be chosen, and a damaged one is left out and named', async () => {
    const { logbook } = await freshLogbook();
    await logbook.importRuns(fileOf(sampleRun('run-1'), sampleRun('run-2'), sampleRun('run-3')));
    await putRaw('entries', { ...entry('run-2', 1), outcome: 'lost' });
    const { text, runs, left } = await logbook.exportRuns(['run-1', 'run-2']);
    expect(JSON.parse(text)).toEqual(JSON.parse(fileOf(sampleRun('run-1'))));
    expect([runs, left.map(({ message }) => message)]).toEqual([
      1,
      [expect.stringContaining('Entry 1 of run run-2')],
    ]);
  });
});

const run = sampleRun('run-9');
const changed = (change: object): KeptRun => ({ ...run, ...change });

const REFUSED: readonly (readonly [what: string, text: string, path: string, message: string])[] = [
  ['no JSON', 'run;step;value', '', 'not JSON'],
  ['another kind of file', '{"followrest":"flow","version":1,"runs":[]}', 'followrest', 'logbook'],
  ['a later version', '{"followrest":"logbook","version":2,"runs":[]}', 'version', '1'],
  ['an unknown field', fileOf({ ...run, extra: 1 }), 'runs.0', 'extra'],
  ['a missing head', fileOf({ ...run, head: undefined }), 'runs.0.head', ''],
  [
    'a foreign source',
    fileOf(changed({ source: { ...run.source, key: 'x' } })),
    'runs.0.source.key',
    '',
  ],
  ['a gap', fileOf(changed({ entries: [entry('run-9', 1)] })), 'runs.0.entries.0.seq', 'must be 0'],
  ['a foreign entry', fileOf(changed({ entries: [entry('x', 0)] })), 'runs.0.entries.0.runId', ''],
  ['a run twice', fileOf(run, run), 'runs.1.head.id', 'twice'],
  [
    'a run that is here and differs',
    fileOf(run, { ...sampleRun('run-1'), readings: [] }),
    'runs.1',
    'differs',
  ],
  [
    'a text that is here and differs',
    fileOf(changed({ source: { ...run.source, flow: 'forged' } })),
    'runs.0',
    'differs',
  ],
];

describe('a file', () => {
  it.each(REFUSED)('with %s is refused whole', async (_what, text, path, message) => {
    const { logbook } = await freshLogbook();
    await logbook.importRuns(fileOf(sampleRun('run-1')));
    const before = await allRows();
    const imported = await logbook.importRuns(text);
    const [fault] = imported.ok ? [] : imported.faults;
    expect(fault?.path).toBe(path);
    expect(fault?.message).toContain(message);
    expect(await allRows()).toEqual(before);
  });
});
