/** A photo of our own forge yard, for the logbook's tests: a few bytes that no picture is made of. */

import type { Photo } from '../../src/logbook/index.ts';

export function samplePhoto(id: string, runId: string, bytes = [255, 216, 0, 7]): Photo {
  return {
    ...{ id, runId, at: 1_790_000_500_000, step: 'clamp', about: 'set-up', type: 'image/jpeg' },
    ...{ width: 2, height: 2, bytes: Uint8Array.from(bytes) },
  } as Photo;
}
