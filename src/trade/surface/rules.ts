/** Surface roughness. */

import type { Rule } from '../rule.ts';
import {
  feedForRoughnessRule,
  roughnessAverageRule,
  roughnessGradeRule,
  roughnessPeakRule,
  sharpRoughnessRule,
} from './roughness.ts';

export const surfaceRules: readonly Rule[] = [
  roughnessPeakRule,
  roughnessAverageRule,
  feedForRoughnessRule,
  sharpRoughnessRule,
  roughnessGradeRule,
];
