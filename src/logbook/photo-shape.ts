/** All of a photo but its bytes, as rows and files hold it. */

import { z } from 'zod';

export const PHOTO_MOST_BYTES = 2_000_000;

const side = z.number().int().min(1).max(8192);
const name = z.string().min(1).max(200);

/** All of a photo but its bytes. */
export const photoHead = {
  id: name,
  runId: name,
  at: z.number().nonnegative(),
  step: z.string().max(200),
  about: z.enum(['set-up', 'piece']),
  type: z.enum(['image/jpeg', 'image/webp', 'image/png']),
  width: side,
  height: side,
};
