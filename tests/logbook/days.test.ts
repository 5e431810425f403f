import { IDBFactory } from 'fake-indexeddb';
import { openDB } from 'idb';
import { describe, expect, it, vi } from 'vitest';
import type { RunHead } from '../../src/bench/ports.ts';
import { NEWEST_RUNS, newestIn, stampIn } from '../../src/logbook/days.ts';
import { openLogbook } from '../../src/logbook/index.ts';
import { allRows, freshLogbook, putRaw } from './fresh-store.ts';
import { entry, sampleRun } from './sample-run.ts';

const DAY = 86_400_000;

describe('the list', () => {
  it('is read from few rows: one a day, one that tells of changes, and no entry', async () => {
    const { logbook } = await freshLogbook();
    const { head, source } = sampleRun('run-0');
    for (let n = 0; n < 6; n++) {
      const startedAt = head.startedAt + Math.floor(n / 3) * DAY + n;
      await logbook.start({ ...head, id: `run-${n}`, startedAt }, source);
    }
    expect((await allRows()).days).toHaveLength(3);
    expect((await logbook.list()).map(({ id }) => id)).toEqual([
      'run-5',
      'run-4',
      'run-3',
      'run-2',
      'run-1',
      'run-0',
    ]);
  });

  it('knows of the end of a run, and what it came to', async () => {
    const { logbook } = await freshLogbook();
    const { head, source, readings } = sampleRun('run-1');
    const { endedAt: _, ...open } = head;
    await logbook.start({ ...open, status: 'open' }, source);
    await logbook.append(entry('run-1', 0));
    await logbook.append(entry('run-1', 1, { outcome: 'unclear', event: null }));
    await logbook.append(entry('run-1', 2, { outcome: 'refused', event: null }));
    await logbook.append(
      entry('run-1', 3, { outcome: 'note', event: { type: 'note', text: 'x' } }),
    );
    const release = { type: 'release', byName: 'Ruth' };
    await logbook.append(entry('run-1', 4, { event: release }));
    await logbook.finish('run-1', { status: 'finished', endedAt: 1.8e12, readings });
    expect(await logbook.list()).toEqual([
      {
        ...head,
        endedAt: 1.8e12,
        tally: {
          ...{ unclear: 1, refused: 1, within: 1, rework: 0, lost: 0, notes: 1 },
          releases: ['Ruth'],
        },
      },
    ]);
  });

  it('is not read again until something has changed it, in this tab or in another', async () => {
    const { logbook } = await freshLogbook();
    const other = await openLogbook(() => undefined);
    const { head, source } = sampleRun('run-1');
    await logbook.start(head, source);
    const before = await logbook.list();
    expect(await logbook.list()).toBe(before);
    await other.start({ ...head, id: 'run-2' }, source);
    expect(await logbook.list()).toHaveLength(2);
    await logbook.finish('run-2', { status: 'given-up', endedAt: 1.8e12, readings: [] });
    expect((await other.list()).find(({ id }) => id === 'run-2')?.status).toBe('given-up');
  });

  it('shows the newest runs while the older ones are read, once, and is whole when it ends', async () => {
    const { logbook } = await freshLogbook();
    const { head, source } = sampleRun('run-0');
    for (let n = 0; n < 75; n++) {
      await logbook.start({ ...head, id: `run-${n}`, startedAt: head.startedAt + n * DAY }, source);
    }
    const fresh = await openLogbook(() => undefined);
    const newest: (readonly string[])[] = [];
    const early = (heads: readonly { readonly id: string }[]) =>
      newest.push(heads.map(({ id }) => id));
    const all = (await fresh.list(early)).map(({ id }) => id);
    expect(all).toEqual(Array.from({ length: 75 }, (_, n) => `run-${74 - n}`));
    expect(newest).toHaveLength(1);
    expect(newest[0]).toHaveLength(NEWEST_RUNS);
    expect(newest[0]).toEqual(all.slice(0, newest[0]?.length));
    await fresh.list(early);
    expect(newest).toHaveLength(1);
  });

  it('shows no part first of a logbook that fills no screen', async () => {
    const { logbook } = await freshLogbook();
    const { head, source } = sampleRun('run-0');
    for (let n = 0; n < NEWEST_RUNS - 1; n++)
      await logbook.start({ ...head, id: `run-${n}` }, source);
    const early = vi.fn();
    expect(await logbook.list(early)).toHaveLength(NEWEST_RUNS - 1);
    expect(early).not.toHaveBeenCalled();
  });

  /** Ids of as many as are shown first, from this one back. */
  const newestOnes = (last: number) =>
    Array.from({ length: NEWEST_RUNS }, (_, n) => `run-${last - n}`);

  /** Ids of what is shown first, as a page that has read nothing yet shows it. */
  const shownFirst = async () => {
    const early = vi.fn<(heads: readonly RunHead[]) => void>();
    const all = await (await openLogbook(() => undefined)).list(early);
    const [heads = []] = early.mock.calls[0] ?? [];
    return { first: heads.map(({ id }) => id), all: all.map(({ id }) => id) };
  };

  it('has its first screen in the row of its stamp, as each write leaves it', async () => {
    const { logbook } = await freshLogbook();
    const { head, source } = sampleRun('run-0');
    const at = (n: number) => ({ ...head, id: `run-${n}`, startedAt: head.startedAt + n * DAY });
    for (let n = 0; n < 60; n++) await logbook.start({ ...at(n), status: 'open' }, source);
    await logbook.finish('run-59', { status: 'given-up', endedAt: 1.9e12, readings: [] });
    await logbook.finish('run-2', { status: 'given-up', endedAt: 1.9e12, readings: [] });
    await logbook.importRuns(
      JSON.stringify({
        ...{ followrest: 'logbook', version: 2, sources: [source], kept: [], photos: [] },
        runs: [at(70), at(-1)].map((one) => ({ head: one, entries: [], readings: [] })),
      }),
    );
    const { first, all } = await shownFirst();
    expect(first).toEqual(['run-70', ...newestOnes(59).slice(0, -1)]);
    expect(all).toHaveLength(62);
    const [stamp] = (await allRows()).days ?? [];
    expect(newestIn(stampIn(stamp))?.find(({ id }) => id === 'run-59')?.status).toBe('given-up');
  });

  it.each([
    ['has none, as an older program left it', undefined],
    ['is damaged', '[{"id":7}]'],
  ])('makes that first screen again at the next write where it %s', async (_, newest) => {
    const { logbook } = await freshLogbook();
    const { head, source } = sampleRun('run-0');
    const at = (n: number) => ({ ...head, id: `run-${n}`, startedAt: head.startedAt + n * DAY });
    for (let n = 0; n < 60; n++) await logbook.start(at(n), source);
    await putRaw('days', { day: '', stamp: 'old', ...(newest === undefined ? {} : { newest }) });
    const before = await shownFirst();
    expect(before.first).toEqual(before.all.slice(0, before.first.length));
    expect(before.all).toHaveLength(60);
    await logbook.start(at(60), source);
    expect((await shownFirst()).first).toEqual(newestOnes(60));
  });

  it('is made again when its stamp is damaged', async () => {
    const { logbook } = await freshLogbook();
    const { head, source } = sampleRun('run-1');
    await logbook.start(head, source);
    await putRaw('days', { day: '', stamp: 7 });
    const list = await logbook.list();
    expect(list).toEqual([head]);
    await logbook.list();
    expect(await logbook.list()).toBe(await logbook.list());
  });

  it('is made again when its rows are damaged', async () => {
    const { logbook } = await freshLogbook();
    const { head, source } = sampleRun('run-1');
    await logbook.start(head, source);
    const day = new Date(head.startedAt).toISOString().slice(0, 10);
    await putRaw('days', { day, heads: 'not JSON' });
    expect(await logbook.list()).toEqual([head]);
    await putRaw('days', { day, heads: '[{"id":7}]' });
    await logbook.start({ ...head, id: 'run-2' }, source);
    expect((await logbook.list()).map(({ id }) => id).sort()).toEqual(['run-1', 'run-2']);
  });

  it('holds the runs of a logbook from before there were days', async () => {
    globalThis.indexedDB = new IDBFactory();
    const old = await openDB('followrest', 1, {
      upgrade(db) {
        db.createObjectStore('runs', { keyPath: 'id' });
        db.createObjectStore('entries', { keyPath: ['runId', 'seq'] });
        db.createObjectStore('sources', { keyPath: 'key' });
        db.createObjectStore('readings', { keyPath: ['runId', 'place'] });
        db.createObjectStore('kept', { keyPath: 'key' });
      },
    });
    const { head, source } = sampleRun('run-1');
    await old.put('runs', head);
    await old.put('sources', source);
    old.close();
    const logbook = await openLogbook(() => undefined);
    expect(await logbook.list()).toEqual([head]);
    expect((await logbook.read('run-1'))?.head).toEqual(head);
  });
});
