/** Photos for the screens: bytes in the logbook, pictures on the page. They never leave this device by themselves. */

import type { Photo, Photos } from '../logbook/index.ts';
import type { PhotosDesk, RunPhoto } from '../screens/world.ts';
import { frontTexts, type Language, sayIn, sentenceOf } from '../texts/index.ts';

export function openPhotos(logbook: Photos, now: () => number, language: Language): PhotosDesk {
  return {
    of: async (runId) => (await logbook.photosOf(runId)).map(shown),
    async add(runId, { picture, ...about }) {
      const bytes = new Uint8Array(await picture.arrayBuffer());
      const type = typeOf(picture);
      if (type === undefined) return sayIn(language, frontTexts)('notPicture');
      try {
        await logbook.addPhoto({
          ...{ id: crypto.randomUUID(), runId, at: now(), type, bytes },
          ...about,
        });
        return null;
      } catch (error) {
        return sentenceOf(error, language);
      }
    },
    remove: (id) => logbook.removePhoto(id),
  };
}

const TYPES: readonly Photo['type'][] = ['image/jpeg', 'image/webp', 'image/png'];

function typeOf({ type }: Blob): Photo['type'] | undefined {
  return TYPES.find((one) => one === type);
}

function shown({ id, at, step, about, width, height, type, bytes }: Photo): RunPhoto {
  return { id, at, step, about, width, height, picture: new Blob([bytes], { type }) };
}
