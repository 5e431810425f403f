/** Turning, facing and boring. */

import type { Rule } from '../rule.ts';
import { cardSpeedRule, nextCardSpeedRule } from './card-speed.ts';
import { spindleSpeedRule, surfaceSpeedRule } from './spindle-speed.ts';

export const turningRules: readonly Rule[] = [
  spindleSpeedRule,
  surfaceSpeedRule,
  cardSpeedRule,
  nextCardSpeedRule,
];
