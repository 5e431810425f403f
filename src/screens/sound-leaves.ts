/** Where the sound goes, told in the same three sentences wherever something listens. */

import type { EarChoice } from './world.ts';

/** Names of the sentences, in the texts of the settings and of the voice alike. */
export const LEAVES = {
  no: 'leavesNo',
  yes: 'leavesYes',
  may: 'leavesMay',
} as const satisfies Readonly<Record<EarChoice['soundLeavesDevice'], string>>;
