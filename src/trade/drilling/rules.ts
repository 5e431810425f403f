/** Drilling, reaming and tapping holes. */

import type { Rule } from '../rule.ts';
import { centreDrillRule } from './centre-drill.ts';
import { counterboreRule } from './counterbore.ts';
import { deepHoleRule, peckPlanRule } from './deep.ts';
import { drillFeedRule, reamFeedRule } from './feed.ts';
import { countersinkDepthRule, drillDepthRule, drillPointRule } from './point.ts';
import { quillTurnsRule } from './quill.ts';
import { reamDrillRule } from './ream.ts';
import { drillSpeedRule } from './speed.ts';
import { tapDrillRule, threadPercentRule } from './tap.ts';
import { tapTorqueRule } from './tap-torque.ts';
import { drillingTimeRule, drillRemovalRule } from './time.ts';

export const drillingRules: readonly Rule[] = [
  drillSpeedRule,
  drillFeedRule,
  drillPointRule,
  drillDepthRule,
  countersinkDepthRule,
  counterboreRule,
  deepHoleRule,
  peckPlanRule,
  quillTurnsRule,
  centreDrillRule,
  reamDrillRule,
  reamFeedRule,
  tapDrillRule,
  threadPercentRule,
  tapTorqueRule,
  drillingTimeRule,
  drillRemovalRule,
];
