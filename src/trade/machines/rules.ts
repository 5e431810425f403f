/** The rules of drill press, band saw and grinder. */

import type { Rule } from '../rule.ts';
import { bandCardSpeed } from './band-card-speed.ts';
import { drillPressSpeed } from './drill-press.ts';
import { grindLength } from './grind-length.ts';
import { grinderGaps } from './grinder-gaps.ts';
import { grinderSpeed, wheelTurnsRule } from './grinder-speed.ts';
import { sawBlank } from './saw-blank.ts';
import { sawPitch } from './saw-pitch.ts';
import { bandSpeed, sawSpeed } from './saw-speed.ts';
import { sawTime } from './saw-time.ts';
import { teethInCut } from './teeth-in-cut.ts';
import { wheelSpeed } from './wheel-speed.ts';

export const machineRules: readonly Rule[] = [
  drillPressSpeed,
  sawPitch,
  sawSpeed,
  bandSpeed,
  bandCardSpeed,
  teethInCut,
  sawBlank,
  sawTime,
  wheelSpeed,
  wheelTurnsRule,
  grinderSpeed,
  grinderGaps,
  grindLength,
];
