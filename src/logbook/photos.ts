/** Photos of a set-up or a finished piece: kept beside the run on this device, taken away when the person says so. */

import { z } from 'zod';
import type { Database } from './database.ts';
import { LogbookFault } from './fault.ts';
import { saidOf } from './issue-text.ts';
import { PHOTO_MOST_BYTES, photoHead } from './photo-shape.ts';
import { fromStore, toWrite, whole } from './rows.ts';

export interface Photo {
  readonly id: string;
  readonly runId: string;
  readonly at: number;
  /** The step it was taken at; empty when the run was over. */
  readonly step: string;
  readonly about: 'set-up' | 'piece';
  readonly type: 'image/jpeg' | 'image/webp' | 'image/png';
  readonly width: number;
  readonly height: number;
  readonly bytes: Uint8Array<ArrayBuffer>;
}

export interface Photos {
  /** @throws LogbookFault 'unfit' when it is too large, or the run has its fill */
  addPhoto(photo: Photo): Promise<void>;
  /** In the order in which they were taken. */
  photosOf(runId: string): Promise<readonly Photo[]>;
  removePhoto(id: string): Promise<void>;
}

export const PHOTOS_A_RUN = 12;

export const photoRow: z.ZodType<Photo> = z.strictObject({
  ...photoHead,
  bytes: z
    .instanceof(Uint8Array<ArrayBuffer>)
    .refine(({ length }) => length > 0, saidOf('photoEmpty'))
    .refine(({ length }) => length <= PHOTO_MOST_BYTES, saidOf('photoLarge')),
});

export function photosIn(db: Database, report: (fault: LogbookFault) => void): Photos {
  return {
    async addPhoto(photo) {
      const row = toWrite(photoRow, photo, (say) => say('photo'));
      await db.write(['runs', 'photos'], async (tx) => {
        if ((await tx.objectStore('runs').getKey(row.runId)) === undefined) {
          throw new LogbookFault('unfit', (say) => say('noRunForPhoto', { run: row.runId }));
        }
        const store = tx.objectStore('photos');
        if ((await store.index('run').count(row.runId)) >= PHOTOS_A_RUN) {
          throw new LogbookFault('unfit', (say) => say('manyPhotos', { n: PHOTOS_A_RUN }));
        }
        await store.put(row);
      });
    },
    async photosOf(runId) {
      const rows = await db.read(['photos'], (tx) =>
        tx.objectStore('photos').index('run').getAll(runId),
      );
      return rows
        .flatMap((row) => whole(() => fromStore(photoRow, row, (say) => say('photo')), report))
        .sort((one, other) => one.at - other.at);
    },
    async removePhoto(id) {
      await db.write(['photos'], (tx) => tx.objectStore('photos').delete(id));
    },
  };
}
