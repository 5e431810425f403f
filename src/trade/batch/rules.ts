/** The rules of batches. */

import type { Rule } from '../rule.ts';
import { batchTime } from './batch-time.ts';
import { capability } from './capability.ts';
import { controlLimits } from './control-limits.ts';
import { drift } from './drift.ts';
import { batchSpread } from './spread.ts';
import { toolOffset, trend } from './trend.ts';

export const batchRules: readonly Rule[] = [
  batchSpread,
  controlLimits,
  capability,
  trend,
  drift,
  toolOffset,
  batchTime,
];
