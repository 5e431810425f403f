import { IDBFactory } from 'fake-indexeddb';
import { openDB } from 'idb';
import { afterEach, describe, expect, it, vi } from 'vitest';
import { openLogbook } from '../../src/logbook/index.ts';
import { freshLogbook } from './fresh-store.ts';

const asIs = (value: unknown) => value;

afterEach(() => {
  vi.restoreAllMocks();
});

/** Makes the next transactions fail the way a browser does. */
function failTransactions(times: number, error: Error) {
  const real = IDBDatabase.prototype.transaction;
  let left = times;
  return vi.spyOn(IDBDatabase.prototype, 'transaction').mockImplementation(function (
    this: IDBDatabase,
    ...args
  ) {
    left -= 1;
    if (left >= 0) throw error;
    return real.apply(this, args);
  });
}

/** A write that is taken, and then fails with the whole transaction, as it may on a full disk. */
function fillUpAtCommit(this: IDBObjectStore): IDBRequest<IDBValidKey> {
  const request = this.get('a');
  const abort: unknown = Reflect.get(this.transaction, '_abort');
  request.addEventListener('success', () => {
    if (typeof abort === 'function') abort.call(this.transaction, 'QuotaExceededError');
  });
  return request;
}

function emptyDatabase(factory: IDBFactory): Promise<IDBDatabase> {
  const opening = factory.open('followrest', 1);
  opening.onupgradeneeded = () => {
    for (const name of ['entries', 'sources', 'readings', 'kept']) {
      opening.result.createObjectStore(name, { keyPath: 'key' });
    }
    opening.result.createObjectStore('runs', { keyPath: 'id' });
  };
  return new Promise((done) => {
    opening.onsuccess = () => done(opening.result);
  });
}

// The two sentences are those of WebKit and Chromium, as quoted in public issue threads.
const LOST = [
  new DOMException('The database connection is closing.', 'InvalidStateError'),
  new DOMException('Connection to Indexed Database server lost. Refresh the page', 'UnknownError'),
];

describe('the connection', () => {
  it.each(LOST)('is opened once more after it was lost: %s', async (error) => {
    const { logbook } = await freshLogbook();
    failTransactions(1, error);
    await logbook.keep('a', 1);
    expect(await logbook.recall('a', asIs)).toBe(1);
  });

  it('is not opened for ever: a second loss is told', async () => {
    const { logbook } = await freshLogbook();
    const [lost = new Error()] = LOST;
    const tried = failTransactions(99, lost);
    await expect(logbook.keep('a', 1)).rejects.toMatchObject({ kind: 'failing' });
    expect(tried).toHaveBeenCalledTimes(2);
  });

  it('is not tried again for other trouble', async () => {
    const { logbook } = await freshLogbook();
    const tried = failTransactions(99, new DOMException('no', 'UnknownError'));
    await expect(logbook.keep('a', 1)).rejects.toThrow('Reload the page');
    expect(tried).toHaveBeenCalledTimes(1);
  });

  it('tells what to do when the device is full, at once or only at the commit', async () => {
    const { logbook } = await freshLogbook();
    const full = new DOMException('no room', 'QuotaExceededError');
    const put = vi.spyOn(IDBObjectStore.prototype, 'put').mockImplementationOnce(() => {
      throw full;
    });
    await expect(logbook.keep('a', 1)).rejects.toMatchObject({ kind: 'full' });
    put.mockRestore();
    vi.spyOn(IDBObjectStore.prototype, 'put').mockImplementationOnce(fillUpAtCommit);
    await expect(logbook.keep('a', 1)).rejects.toThrow('Export the runs to a file');
  });

  it('gives way when a newer version opens in another tab, and says so', async () => {
    const { logbook, faults } = await freshLogbook();
    const newer = await openDB('followrest', 3);
    expect(faults.map(({ kind }) => kind)).toEqual(['taken']);
    await expect(logbook.list()).rejects.toThrow('Reload this page');
    newer.close();
  });

  it('says so when an older tab holds it back, and goes on when that closes', async () => {
    const factory = new IDBFactory();
    const older = await emptyDatabase(factory);
    vi.stubGlobal('indexedDB', factory);
    const faults: string[] = [];
    const opening = openLogbook((fault) => faults.push(fault.message));
    await vi.waitFor(() => expect(faults).toEqual([expect.stringContaining('older logbook')]));
    older.close();
    expect(await (await opening).list()).toEqual([]);
    vi.unstubAllGlobals();
  });

  it('is refused with a sentence where nothing can be kept', async () => {
    vi.stubGlobal('indexedDB', undefined);
    await expect(openLogbook(() => undefined)).rejects.toThrow('it has no IndexedDB');
    vi.unstubAllGlobals();
  });
});
