/** The rules of tapers and angles. */

import type { Rule } from '../rule.ts';
import { compoundAngle, taperFromName } from './compound-angle.ts';
import { morseTaper } from './morse.ts';
import { tailstockCorrection } from './tailstock-correction.ts';
import { tailstockOffset } from './tailstock-offset.ts';
import { sineBarAngle, sineBarHeight, taperOverRollers, taperWithBalls } from './taper-checks.ts';

export const taperRules: readonly Rule[] = [
  compoundAngle,
  taperFromName,
  tailstockOffset,
  tailstockCorrection,
  morseTaper,
  taperOverRollers,
  taperWithBalls,
  sineBarHeight,
  sineBarAngle,
];
