/** Stiffness of work and tools. */

import type { Rule } from '../rule.ts';
import { bendBetweenCentresRule, bendChuckAndCentreRule, bendInChuckRule } from './beam.ts';
import { boringBendRule, boringOverhangRule, overhangRule, steadyRule } from './overhang.ts';
import { overhangSpeedRule } from './whirl.ts';

export const stiffnessRules: readonly Rule[] = [
  bendInChuckRule,
  bendChuckAndCentreRule,
  bendBetweenCentresRule,
  overhangRule,
  steadyRule,
  overhangSpeedRule,
  boringOverhangRule,
  boringBendRule,
];
