import { describe, expect, it } from 'vitest';
import type { KeptRun } from '../../src/bench/ports.ts';
import { stampIn } from '../../src/logbook/days.ts';
import type { Logbook } from '../../src/logbook/index.ts';
import { allRows, freshLogbook, putRaw } from './fresh-store.ts';
import { samplePhoto } from './sample-photo.ts';
import { entry, sampleRun } from './sample-run.ts';

function fileOf(...runs: readonly KeptRun[]): string {
  const filed = runs.map(({ source: _, ...rest }) => rest);
  const sources = [...new Map(runs.map(({ source }) => [source.key, source])).values()];
  return withRuns(filed, { sources });
}

function withRuns(runs: readonly unknown[], more: object = {}): string {
  const sources = [sampleRun('x').source];
  const file = { followrest: 'logbook', version: 2, sources, runs, kept: [], photos: [] };
  return JSON.stringify({ ...file, ...more });
}

const exported = async (logbook: Logbook, ids?: readonly string[]) => {
  const { parts, ...rest } = await logbook.exportRuns(ids);
  return { text: parts.join(''), ...rest };
};

/** All but the stamp of the list, which is another one after every change. */
async function unstamped() {
  const { days = [], ...rows } = await allRows();
  return { ...rows, days: days.filter((row) => stampIn(row) === null) };
}

describe('a logbook in a file', () => {
  it('is the same on another device', async () => {
    const first = await freshLogbook();
    const text = fileOf(sampleRun('run-1'), sampleRun('run-2'));
    expect(await first.logbook.importRuns(text)).toMatchObject({ ok: true, added: 2 });
    await first.logbook.keep('operator/ida', { name: 'Ida' });
    await first.logbook.addPhoto(samplePhoto('photo-1', 'run-1'));
    const rows = await unstamped();
    const out = await exported(first.logbook);
    expect(out).toMatchObject({ runs: 2, left: [] });

    const second = await freshLogbook();
    expect(await second.logbook.importRuns(out.text)).toMatchObject({
      ...{ ok: true, added: 2, keptAdded: 1, photosAdded: 1, keptLeft: [] },
    });
    expect(await unstamped()).toEqual(rows);
    expect(await second.logbook.read('run-1')).toEqual(sampleRun('run-1'));
    expect((await exported(second.logbook)).text).toBe(out.text);
  });

  it('holds a text that runs share once', async () => {
    const { logbook } = await freshLogbook();
    await logbook.importRuns(fileOf(sampleRun('run-1'), sampleRun('run-2')));
    expect(JSON.parse((await exported(logbook)).text).sources).toEqual([sampleRun('x').source]);
  });

  it('holds no passphrase and no key of the seal', async () => {
    const { logbook } = await freshLogbook();
    await logbook.secrets.setPassphrase('ruth', 'blue anvil morning');
    await logbook.secrets.seal('something');
    const { text } = await exported(logbook);
    expect(text).not.toMatch(/PBKDF2|salt|hash|anvil|secret|seal/i);
  });

  it('is taken once', async () => {
    const { logbook } = await freshLogbook();
    await logbook.importRuns(fileOf(sampleRun('run-1')));
    const again = await logbook.importRuns(fileOf(sampleRun('run-1'), sampleRun('run-2')));
    expect(again).toMatchObject({ ok: true, added: 1, alreadyHere: 1 });
  });

  it('leaves what is kept here as it is, and names it', async () => {
    const { logbook } = await freshLogbook();
    await logbook.keep('settings', { theme: 'dark' });
    await logbook.keep('card/a', { id: 'a' });
    const kept = [
      { key: 'settings', value: { theme: 'light' } },
      { key: 'card/a', value: { id: 'a' } },
      { key: 'card/b', value: { id: 'b' } },
    ];
    const taken = await logbook.importRuns(withRuns([], { kept }));
    expect(taken).toMatchObject({ ok: true, keptAdded: 1, keptLeft: ['settings'] });
    expect(await logbook.recall('settings', (value) => value)).toEqual({ theme: 'dark' });
  });

  it('of the first version is still read', async () => {
    const { logbook } = await freshLogbook();
    const runs = [sampleRun('run-1'), sampleRun('run-2')];
    const text = JSON.stringify({ followrest: 'logbook', version: 1, runs });
    expect(await logbook.importRuns(text)).toMatchObject({ ok: true, added: 2 });
    expect(await logbook.read('run-2')).toEqual(sampleRun('run-2'));
  });

  it('can hold chosen runs, and a damaged one is left out and named', async () => {
    const { logbook } = await freshLogbook();
    await logbook.importRuns(fileOf(sampleRun('run-1'), sampleRun('run-2'), sampleRun('run-3')));
    await putRaw('entries', { ...entry('run-2', 1), outcome: 'lost' });
    const { text, runs, left } = await exported(logbook, ['run-1', 'run-2']);
    expect(JSON.parse(text)).toEqual(JSON.parse(fileOf(sampleRun('run-1'))));
    expect([runs, left.map(({ message }) => message)]).toEqual([
      1,
      [expect.stringContaining('Entry 1 of run run-2')],
    ]);
  });
});

const run = sampleRun('run-9');
const changed = (change: object): string => fileOf({ ...run, ...change });
const { source: _, ...filed } = run;
const photo = { ...samplePhoto('p', 'run-9'), bytes: undefined, data: 'AAAA' };
const { bytes: __, ...filedPhoto } = photo;

const REFUSED: readonly (readonly [what: string, text: string, path: string, message: string])[] = [
  ['no JSON', 'run;step;value', '', 'not JSON'],
  ['nothing in it', '', '', 'not JSON'],
  ['another kind of file', withRuns([], { followrest: 'flow' }), 'followrest', 'logbook'],
  ['a later version', withRuns([], { version: 3 }), 'version', ''],
  ['an unknown field', withRuns([{ ...filed, extra: 1 }]), 'runs.0', 'extra'],
  ['a missing head', withRuns([{ ...filed, head: undefined }]), 'runs.0.head', ''],
  ['a missing source', withRuns([filed], { sources: [] }), 'runs.0.head.sourceKey', 'no source'],
  ['a gap', changed({ entries: [entry('run-9', 1)] }), 'runs.0.entries.0.seq', 'must be 0'],
  ['a foreign entry', changed({ entries: [entry('x', 0)] }), 'runs.0.entries.0.runId', ''],
  ['a run twice', fileOf(run, run), 'runs.1.head.id', 'twice'],
  [
    'a run that is here and differs',
    fileOf(run, { ...sampleRun('run-1'), readings: [] }),
    'runs.1',
    'differs',
  ],
  [
    'a text that is here and differs',
    changed({ source: { ...run.source, flow: 'forged' } }),
    'sources.0',
    'differs',
  ],
  [
    'a value nobody can read',
    withRuns([], { kept: [{ key: 'settings', value: 7 }] }),
    'kept.0',
    'settings',
  ],
  [
    'a photo of no run',
    withRuns([], { photos: [filedPhoto] }),
    'photos.0.runId',
    'no run of the file',
  ],
  [
    'a photo that is no base64',
    withRuns([filed], { photos: [{ ...filedPhoto, data: '%%%' }] }),
    'photos.0.data',
    '',
  ],
  [
    'a photo of another kind',
    withRuns([filed], { photos: [{ ...filedPhoto, type: 'text/html' }] }),
    'photos.0.type',
    '',
  ],
];

describe('a file', () => {
  it.each(REFUSED)('with %s is refused whole', async (_what, text, path, message) => {
    const { logbook } = await freshLogbook();
    await logbook.importRuns(fileOf(sampleRun('run-1')));
    const before = await allRows();
    const imported = await logbook.importRuns(text, (key) =>
      key === 'settings' ? 'The settings cannot be read.' : null,
    );
    const [fault] = imported.ok ? [] : imported.faults;
    expect(fault?.path).toBe(path);
    expect(fault?.message).toContain(message);
    expect(await allRows()).toEqual(before);
  });
});
