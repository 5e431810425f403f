/** Where the picture of the machine stands on the Bench. Pure. */

import type { Scene } from './scene.ts';

/** Before or behind the questions, or under the instruction where that has a column of its own. */
export type PicturePlace = 'before-asks' | 'behind-asks' | 'below' | 'nowhere';

/**
 * What is to be done is seen before what may be asked, so on a page of one column the picture stands before the questions.
 * Who cuts at their own pace knows the part: figures and words come first there, and the picture last.
 */
export function picturePlace(
  { layout, pace }: Pick<Scene, 'layout' | 'pace'>,
  isOneColumn: boolean,
): PicturePlace {
  if (layout === 'done') return 'nowhere';
  if (layout === 'cutting') return pace === 'own-pace' ? 'behind-asks' : 'before-asks';
  return layout === 'doing' || isOneColumn ? 'before-asks' : 'below';
}
