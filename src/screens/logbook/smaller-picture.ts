/** Draws a camera's picture smaller. What is drawn anew holds no place, no name and no serial number of a camera. */

/** Enough to read a dial on. */
const LONGEST_SIDE = 1600;
const QUALITIES = [0.82, 0.6, 0.4];
/** As the logbook keeps at most. */
const MOST_BYTES = 2_000_000;

export interface Smaller {
  readonly picture: Blob;
  readonly width: number;
  readonly height: number;
}

/** Nothing when it is no picture that this browser can read, or stays too large. */
export async function smallerPicture(file: Blob): Promise<Smaller | null> {
  const bitmap = await createImageBitmap(file).catch(() => null);
  if (!bitmap) return null;
  const { width, height } = sizeWithin(bitmap.width, bitmap.height, LONGEST_SIDE);
  const canvas = document.createElement('canvas');
  canvas.width = width;
  canvas.height = height;
  canvas.getContext('2d')?.drawImage(bitmap, 0, 0, width, height);
  bitmap.close();
  for (const quality of QUALITIES) {
    const picture = await new Promise<Blob | null>((done) =>
      canvas.toBlob(done, 'image/jpeg', quality),
    );
    if (picture && picture.size <= MOST_BYTES) return { picture, width, height };
  }
  return null;
}

/** The same shape with no side longer than `most`; a small picture stays as it is. */
export function sizeWithin(
  width: number,
  height: number,
  most: number,
): { readonly width: number; readonly height: number } {
  const scale = Math.min(1, most / Math.max(width, height));
  return {
    width: Math.max(1, Math.round(width * scale)),
    height: Math.max(1, Math.round(height * scale)),
  };
}
