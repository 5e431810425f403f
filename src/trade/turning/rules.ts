/** Turning, facing, boring and parting. */

import type { Rule } from '../rule.ts';
import { cardSpeedRule, nextCardSpeedRule } from './card-speed.ts';
import { chuckGripRule, chuckRimRule } from './chuck.ts';
import { compoundTravelRule, dialSettingRule } from './dial.ts';
import { facingPlanRule } from './facing-plan.ts';
import { constantFacingTimeRule, facingTimeRule } from './facing-time.ts';
import { cardFeedRule, feedPerRevRule, feedRateRule, turningFeedRule } from './feed.ts';
import { nextPassRule } from './next-pass.ts';
import { barOutRule, partingBladeRule, partingSpeedRule } from './parting.ts';
import { passPlanRule } from './pass-plan.ts';
import { runningSpeedRule } from './running.ts';
import { speedForMaterialRule } from './speed-for.ts';
import { spindleSpeedRule, surfaceSpeedRule } from './spindle-speed.ts';
import { cuttingTimeRule, speedForTimeRule, turningRemovalRule, turningTimeRule } from './time.ts';

export const turningRules: readonly Rule[] = [
  spindleSpeedRule,
  surfaceSpeedRule,
  cardSpeedRule,
  nextCardSpeedRule,
  speedForMaterialRule,
  runningSpeedRule,
  chuckRimRule,
  chuckGripRule,
  turningFeedRule,
  cardFeedRule,
  feedRateRule,
  feedPerRevRule,
  passPlanRule,
  nextPassRule,
  facingPlanRule,
  dialSettingRule,
  compoundTravelRule,
  turningTimeRule,
  cuttingTimeRule,
  facingTimeRule,
  constantFacingTimeRule,
  speedForTimeRule,
  turningRemovalRule,
  partingSpeedRule,
  partingBladeRule,
  barOutRule,
];
