import fc from 'fast-check';
import { describe, expect, it, vi } from 'vitest';
import type { RunEntry } from '../../src/bench/ports.ts';
import { allRows, freshLogbook, putRaw } from './fresh-store.ts';
import { entry, sampleRun } from './sample-run.ts';

/** An open run without entries in a fresh logbook. */
async function openRun(id = 'run-1') {
  const { logbook, faults } = await freshLogbook();
  const { head, source } = sampleRun(id);
  const { endedAt: _, ...rest } = head;
  await logbook.start({ ...rest, status: 'open' }, source);
  return { logbook, faults, head, source };
}

const word = fc.string({ maxLength: 20, unit: 'grapheme' });
const randomEntry = fc.record(
  {
    at: fc.nat(),
    step: word,
    heard: fc.record({
      text: word,
      from: fc.constantFrom('speech', 'key', 'touch', 'gauge', 'script'),
      confidence: fc.double({ min: 0, max: 1, noNaN: true }),
    }),
    event: fc.option(fc.dictionary(fc.stringMatching(/^[a-z]{1,8}$/), fc.jsonValue()), {
      nil: null,
    }),
    outcome: fc.constantFrom('moved', 'refused', 'asked', 'unclear', 'note'),
    said: word,
  },
  { requiredKeys: ['at', 'step', 'heard', 'event', 'outcome'], noNullPrototype: true },
);

describe('the ledger', () => {
  it('gives a finished run back as it was told', async () => {
    const { logbook } = await openRun('run-1');
    const run = sampleRun('run-1');
    for (const each of run.entries) await logbook.append(each);
    await logbook.finish('run-1', {
      status: 'finished',
      endedAt: 1_790_000_900_000,
      readings: run.readings,
    });
    const { head, ...rest } = run;
    const tally = { unclear: 0, refused: 0, within: 1, rework: 0, lost: 0, notes: 0, releases: [] };
    expect(await logbook.read('run-1')).toEqual({ head: { ...head, tally }, ...rest });
  });

  it('gives any entries back equal, in order, after it was closed', async () => {
    await fc.assert(
      fc.asyncProperty(fc.array(randomEntry, { maxLength: 12 }), async (changes) => {
        const { logbook } = await openRun();
        const told = changes.map((change, seq) => entry('run-1', seq, change as Partial<RunEntry>));
        for (const each of told) await logbook.append(each);
        logbook.close();
        expect((await logbook.read('run-1'))?.entries).toEqual(told);
      }),
      { seed: 20261125, numRuns: 40 },
    );
  });

  it('keeps the entries of runs apart whose names begin alike', async () => {
    const { logbook, head, source } = await openRun('run-1');
    await logbook.start({ ...head, id: 'run-10' }, source);
    await logbook.append(entry('run-10', 0));
    expect((await logbook.read('run-1'))?.entries).toEqual([]);
  });

  it('lists heads newest first', async () => {
    const { logbook, head, source } = await openRun('old');
    await logbook.start({ ...head, id: 'new', startedAt: head.startedAt + 1 }, source);
    expect((await logbook.list()).map(({ id }) => id)).toEqual(['new', 'old']);
  });

  it('keeps the same text of a flow once', async () => {
    const { logbook, head, source } = await openRun('run-1');
    await logbook.start({ ...head, id: 'run-2' }, source);
    expect((await allRows()).sources).toEqual([source]);
  });

  it('knows no run that was never started', async () => {
    const { logbook } = await freshLogbook();
    expect(await logbook.read('absent')).toBeNull();
    await expect(logbook.append(entry('absent', 0))).rejects.toMatchObject({ kind: 'unfit' });
  });

  it('takes entries without a gap only', async () => {
    const { logbook } = await openRun();
    await logbook.append(entry('run-1', 0));
    await expect(logbook.append(entry('run-1', 2))).rejects.toThrow('has nothing before it');
  });

  it('takes the same entry twice as one, and refuses another in its place', async () => {
    const { logbook } = await openRun();
    await logbook.append(entry('run-1', 0));
    await logbook.append(entry('run-1', 0));
    const other = logbook.append(entry('run-1', 0, { step: 'other' }));
    await expect(other).rejects.toMatchObject({ kind: 'taken' });
    expect((await logbook.read('run-1'))?.entries).toEqual([entry('run-1', 0)]);
  });

  it('writes nothing that is not a row', async () => {
    const { logbook } = await openRun();
    const mistaken: readonly Partial<RunEntry>[] = [
      { at: Number.NaN },
      { event: { when: () => 1 } },
      { outcome: 'guessed' as 'moved' },
      { heard: { text: 'x', from: 'key', confidence: 2 } },
      { surprise: 1 } as Partial<RunEntry>,
    ];
    for (const mistake of mistaken) {
      const told = logbook.append(entry('run-1', 0, mistake));
      await expect(told, JSON.stringify(mistake)).rejects.toMatchObject({ kind: 'unfit' });
    }
    expect((await allRows()).entries).toEqual([]);
  });

  it('opens every writing transaction with strict durability', async () => {
    const opened = vi.spyOn(IDBDatabase.prototype, 'transaction');
    const { logbook } = await openRun();
    await logbook.append(entry('run-1', 0));
    await logbook.finish('run-1', { status: 'given-up', endedAt: 2e12, readings: [] });
    await logbook.keep('card/yard-lathe', { speeds: [60] });
    await logbook.forget('card/yard-lathe');
    await logbook.importRuns((await logbook.exportRuns()).parts.join(''));
    const writing = opened.mock.calls.filter(([, mode]) => mode === 'readwrite');
    opened.mockRestore();
    expect(writing).toHaveLength(6);
    for (const [, , options] of writing) expect(options).toEqual({ durability: 'strict' });
  });
});

describe('a damaged row', () => {
  it('is left out of the list when that is made again, and reported', async () => {
    const { logbook, faults } = await openRun();
    await putRaw('runs', { id: 'bad', status: 'perhaps' });
    await putRaw('days', { day: '2026-09-21', heads: '' });
    expect((await logbook.list()).map(({ id }) => id)).toEqual(['run-1']);
    expect(faults.map(({ message }) => message)).toEqual([expect.stringContaining('run bad')]);
  });

  it('makes the run it is in unreadable, and is named', async () => {
    const { logbook } = await openRun();
    await logbook.append(entry('run-1', 0));
    await putRaw('entries', { ...entry('run-1', 1), version: 2 });
    await expect(logbook.read('run-1')).rejects.toThrow('Entry 1 of run run-1 is damaged');
  });

  it('is noticed when it is gone', async () => {
    const { logbook } = await openRun();
    await putRaw('entries', entry('run-1', 1));
    await expect(logbook.read('run-1')).rejects.toThrow('Entry 0 of run run-1 is missing');
  });

  it('of a flow text is mended by the next run of that flow', async () => {
    const { logbook, head, source } = await openRun();
    await putRaw('sources', { key: source.key, flow: 7 });
    await expect(logbook.read('run-1')).rejects.toMatchObject({ kind: 'damaged' });
    await logbook.start({ ...head, id: 'run-2' }, source);
    expect((await logbook.read('run-1'))?.source).toEqual(source);
  });
});
