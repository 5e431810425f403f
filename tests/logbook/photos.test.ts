import { describe, expect, it } from 'vitest';
import { PHOTO_MOST_BYTES, PHOTOS_A_RUN } from '../../src/logbook/index.ts';
import { allRows, freshLogbook, putRaw } from './fresh-store.ts';
import { samplePhoto } from './sample-photo.ts';
import { sampleRun } from './sample-run.ts';

async function withRun() {
  const made = await freshLogbook();
  const { head, source } = sampleRun('run-1');
  await made.logbook.start(head, source);
  return made;
}

describe('a photo', () => {
  it('is given back as it was, with the run it is of', async () => {
    const { logbook } = await withRun();
    const later = { ...samplePhoto('a', 'run-1'), at: 1_790_000_600_000 };
    await logbook.addPhoto(later);
    await logbook.addPhoto(samplePhoto('b', 'run-1'));
    expect(await logbook.photosOf('run-1')).toEqual([samplePhoto('b', 'run-1'), later]);
    expect(await logbook.photosOf('run-10')).toEqual([]);
  });

  it('is gone when it was taken away', async () => {
    const { logbook } = await withRun();
    await logbook.addPhoto(samplePhoto('a', 'run-1'));
    await logbook.removePhoto('a');
    expect((await allRows()).photos).toEqual([]);
  });

  it('is refused when it is too large, is empty, or of no run', async () => {
    const { logbook } = await withRun();
    const large = { ...samplePhoto('a', 'run-1'), bytes: new Uint8Array(PHOTO_MOST_BYTES + 1) };
    await expect(logbook.addPhoto(large)).rejects.toThrow('over 2 MB');
    await expect(logbook.addPhoto(samplePhoto('a', 'run-1', []))).rejects.toThrow('empty');
    await expect(logbook.addPhoto(samplePhoto('a', 'run-2'))).rejects.toThrow('no run run-2');
    expect((await allRows()).photos).toEqual([]);
  });

  it('is refused when the run has its fill', async () => {
    const { logbook } = await withRun();
    for (let n = 0; n < PHOTOS_A_RUN; n++) await logbook.addPhoto(samplePhoto(`p${n}`, 'run-1'));
    await expect(logbook.addPhoto(samplePhoto('more', 'run-1'))).rejects.toThrow('Take one away');
  });

  it('that is damaged is left out and told', async () => {
    const { logbook, faults } = await withRun();
    await putRaw('photos', { ...samplePhoto('a', 'run-1'), type: 'text/html' });
    expect(await logbook.photosOf('run-1')).toEqual([]);
    expect(faults).toHaveLength(1);
  });
});
