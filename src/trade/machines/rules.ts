/** The rules of drill press, band saw and grinder. */

import type { Rule } from '../rule.ts';
import { drillPressSpeed } from './drill-press.ts';
import { grinderGaps } from './grinder-gaps.ts';
import { sawPitch } from './saw-pitch.ts';
import { bandSpeed, sawSpeed } from './saw-speed.ts';
import { wheelSpeed } from './wheel-speed.ts';

export const machineRules: readonly Rule[] = [
  drillPressSpeed,
  sawPitch,
  sawSpeed,
  bandSpeed,
  wheelSpeed,
  grinderGaps,
];
