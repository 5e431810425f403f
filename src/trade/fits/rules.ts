/** The rules of fits and tolerances. */

import type { Rule } from '../rule.ts';
import { fitPair } from './fit-pair.ts';
import { generalAngleTolerance, generalTolerance } from './general-tolerance.ts';
import { guardBand } from './guard-band.ts';
import { judgeReading } from './judge-reading.ts';
import { limitsOfSize } from './limits-of-size.ts';
import { toleranceGrade } from './tolerance-grade.ts';

export const fitRules: readonly Rule[] = [
  toleranceGrade,
  limitsOfSize,
  fitPair,
  generalTolerance,
  generalAngleTolerance,
  judgeReading,
  guardBand,
];
