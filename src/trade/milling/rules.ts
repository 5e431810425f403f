/** The rules of milling and indexing. */

import type { Rule } from '../rule.ts';
import { boltCircle } from './bolt-circle.ts';
import { chipThinning } from './chip-thinning.ts';
import { depthPasses } from './depth-passes.ts';
import { indexAngle, indexing } from './indexing.ts';
import { millingPower } from './power.ts';
import { rotaryTable } from './rotary-table.ts';
import { squareUp } from './square-up.ts';
import { cutterSpeed, tableFeed } from './table-feed.ts';
import { millingTime } from './time.ts';
import { trammingError } from './tramming.ts';

export const millingRules: readonly Rule[] = [
  cutterSpeed,
  tableFeed,
  chipThinning,
  depthPasses,
  millingPower,
  millingTime,
  indexing,
  indexAngle,
  rotaryTable,
  trammingError,
  squareUp,
  boltCircle,
];
