import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { KeptRun, RunEntry, RunHead } from '../../src/bench/ports.ts';
import { stampIn } from '../../src/logbook/days.ts';
import type { Photo } from '../../src/logbook/index.ts';
import { allRows, freshLogbook } from './fresh-store.ts';
import { entry, sampleRun } from './sample-run.ts';

const settings = { seed: 20261125 };
const word = fc.string({ maxLength: 12, unit: 'grapheme' });
const count = fc.nat({ max: 99 });

const head = fc.record(
  {
    operator: word,
    operatorId: fc.uuid(),
    pace: fc.constantFrom<RunHead['pace']>('first-time', 'familiar', 'own-pace'),
    batch: fc.record({ id: fc.uuid(), piece: fc.integer({ min: 2, max: 40 }) }),
    startedAt: fc.integer({ min: 1_700_000_000_000, max: 1_900_000_000_000 }),
    endedAt: fc.integer({ min: 1_900_000_000_000, max: 1_900_000_900_000 }),
    status: fc.constantFrom<RunHead['status']>('open', 'finished', 'given-up'),
    inputs: fc.dictionary(
      fc.stringMatching(/^[a-z]{1,6}$/),
      fc.oneof(
        word,
        fc.double({ noNaN: true, noDefaultInfinity: true }).map((x) => x + 0),
      ),
    ),
    tally: fc.record({
      ...{ unclear: count, refused: count, within: count, rework: count, lost: count },
      ...{ notes: count, releases: fc.array(word, { maxLength: 2 }) },
    }),
  },
  { requiredKeys: ['operator', 'startedAt', 'status', 'inputs'], noNullPrototype: true },
);

const change = fc.record(
  {
    outcome: fc.constantFrom<RunEntry['outcome']>('moved', 'refused', 'asked', 'unclear', 'note'),
    event: fc.option(fc.dictionary(fc.stringMatching(/^[a-z]{1,6}$/), fc.jsonValue()), {
      nil: null,
    }),
    said: word,
    understood: word,
  },
  { requiredKeys: ['outcome', 'event'], noNullPrototype: true },
);

const oneRun = fc.record({
  id: fc.uuid(),
  head,
  changes: fc.array(change, { maxLength: 6 }),
  photos: fc.array(fc.uint8Array({ minLength: 1, maxLength: 40 }), { maxLength: 2 }),
});
type OneRun = typeof oneRun extends fc.Arbitrary<infer T> ? T : never;

const everything = fc.record({
  runs: fc.uniqueArray(oneRun, { maxLength: 5, selector: ({ id }) => id }),
  kept: fc.dictionary(fc.stringMatching(/^[a-z]{1,6}\/[a-z]{1,4}$/), fc.jsonValue(), {
    maxKeys: 4,
    noNullPrototype: true,
  }),
});

/** Through JSON, as every file goes: -0 and shared parts come out plain. */
const plain = <T>(value: T): T => JSON.parse(JSON.stringify(value)) as T;

function fileOf({ runs }: { readonly runs: readonly OneRun[] }): string {
  const sample = sampleRun('x');
  const filed = runs.map(({ id, head: change, changes }) => {
    const { endedAt: _, ...rest } = sample.head;
    const made: Omit<KeptRun, 'source'> = {
      head: { ...rest, ...change, id } as RunHead,
      entries: changes.map((each, seq) => entry(id, seq, each as Partial<RunEntry>)),
      readings: sample.readings,
    };
    return made;
  });
  const file = { followrest: 'logbook', version: 2, sources: [sample.source], runs: filed };
  return JSON.stringify({ ...file, kept: [], photos: [] });
}

async function filledLogbook(all: { readonly runs: readonly OneRun[]; readonly kept: object }) {
  const { logbook } = await freshLogbook();
  const taken = await logbook.importRuns(fileOf(all));
  expect(taken).toMatchObject({ ok: true, added: all.runs.length });
  for (const [key, value] of Object.entries(plain(all.kept))) await logbook.keep(key, value);
  for (const { id, photos } of all.runs) {
    for (const [place, bytes] of photos.entries()) {
      const about = place === 0 ? 'set-up' : 'piece';
      const photo = { id: `${id}/${place}`, runId: id, at: place, step: 'clamp', about };
      const picture = { type: 'image/jpeg', width: 3, height: 4, bytes: Uint8Array.from(bytes) };
      await logbook.addPhoto({ ...photo, ...picture } as Photo);
    }
  }
  return logbook;
}

describe('export, wipe, import', () => {
  it('gives back every row of any logbook, the list among them', async () => {
    await fc.assert(
      fc.asyncProperty(everything, async (all) => {
        const first = await filledLogbook(all);
        const rows = await allRows();
        const heads = await first.list();
        const text = (await first.exportRuns()).parts.join('');

        const { logbook, faults } = await freshLogbook();
        expect(await logbook.importRuns(text)).toMatchObject({ ok: true, keptLeft: [] });
        expect(sorted(await allRows())).toEqual(sorted(rows));
        expect(new Set(await logbook.list())).toEqual(new Set(heads));
        expect(faults).toEqual([]);
      }),
      { ...settings, numRuns: 40 },
    );
  });

  it('changes nothing when the same file comes again', async () => {
    await fc.assert(
      fc.asyncProperty(everything, async (all) => {
        const logbook = await filledLogbook(all);
        const rows = await allRows();
        const text = (await logbook.exportRuns()).parts.join('');
        expect(await logbook.importRuns(text)).toMatchObject({ ok: true, added: 0 });
        expect(await allRows()).toEqual(rows);
      }),
      { ...settings, numRuns: 10 },
    );
  });
});

describe('a file that was cut short or altered', () => {
  const cut = fc.record({
    all: everything,
    from: fc.double({ min: 0, max: 1, noNaN: true }),
    put: fc.oneof(fc.constant(null), fc.string({ maxLength: 3 })),
    length: fc.nat({ max: 12 }),
  });

  it('is refused with reasons and changes nothing, or says nothing else than the file did', async () => {
    let refused = 0;
    await fc.assert(
      fc.asyncProperty(cut, async ({ all, from, put, length }) => {
        const text = (await (await filledLogbook(all)).exportRuns()).parts.join('');
        const at = Math.floor(from * text.length);
        const altered =
          put === null ? text.slice(0, at) : text.slice(0, at) + put + text.slice(at + length);
        const { logbook } = await freshLogbook();
        const before = await allRows();
        const taken = await logbook.importRuns(altered);
        if (taken.ok) {
          // Letters inside a note or a name may differ and still be a sound file.
          expect((await logbook.exportRuns()).left).toEqual([]);
          expect(() => JSON.parse(altered)).not.toThrow();
          return;
        }
        refused += 1;
        expect(taken.faults.every(({ message }) => message !== '')).toBe(true);
        expect(taken.faults.length).toBeGreaterThan(0);
        expect(await allRows()).toEqual(before);
      }),
      { ...settings, numRuns: 120 },
    );
    expect(refused).toBeGreaterThan(60);
  });

  it('that was cut anywhere before its end is always refused', async () => {
    const { logbook } = await freshLogbook();
    await logbook.importRuns(fileOf({ runs: [] }));
    const text = fileOf({ runs: [] });
    const before = await allRows();
    for (let length = 0; length < text.length; length += 7) {
      expect((await logbook.importRuns(text.slice(0, length))).ok).toBe(false);
    }
    expect(await allRows()).toEqual(before);
  });
});

/** Stores in one order: runs have random ids, rows come by key, and each change of the list makes a stamp of its own. */
function sorted(rows: Record<string, readonly unknown[]>): Record<string, readonly string[]> {
  return Object.fromEntries(
    Object.entries(rows).map(([name, list]) => [
      name,
      list
        .filter((row) => stampIn(row) === null)
        .map((row) => JSON.stringify(dayHeadsSorted(row), (_, v) => bytesText(v)))
        .sort(),
    ]),
  );
}

function dayHeadsSorted(row: unknown): unknown {
  if (typeof row !== 'object' || row === null || !('heads' in row)) return row;
  const heads = JSON.parse(String(row.heads)) as RunHead[];
  return { ...row, heads: heads.map((one) => JSON.stringify(one)).sort() };
}

function bytesText(value: unknown): unknown {
  return value instanceof Uint8Array ? `bytes ${[...value].join()}` : value;
}
