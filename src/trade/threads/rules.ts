/** The rules of threads. */

import type { Rule } from '../rule.ts';
import { changeGears } from './change-gears.ts';
import { chasingDial } from './chasing-dial.ts';
import { threadInfeed } from './infeed.ts';
import { threadSizes } from './profile.ts';
import { threadRelief } from './relief.ts';
import { tapDrillAtHand } from './tap-drill-at-hand.ts';
import { threadLimits } from './thread-limits.ts';
import { bestWire, pitchDiameterOverWires, sizeOverWires } from './wires.ts';

export const threadRules: readonly Rule[] = [
  threadSizes,
  threadLimits,
  threadInfeed,
  threadRelief,
  tapDrillAtHand,
  changeGears,
  chasingDial,
  bestWire,
  sizeOverWires,
  pitchDiameterOverWires,
];
