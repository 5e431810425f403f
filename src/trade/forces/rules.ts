/** Cutting forces, torque and power. */

import type { Rule } from '../rule.ts';
import {
  drillPowerRule,
  drillThrustRule,
  drillTorqueLawRule,
  drillTorqueRule,
} from './drilling.ts';
import { removalPowerRule } from './energy.ts';
import { specificForceRule } from './kienzle.ts';
import {
  cuttingForceRule,
  cuttingPowerRule,
  deepestByPowerRule,
  powerFromForceRule,
} from './turning.ts';

export const forceRules: readonly Rule[] = [
  specificForceRule,
  cuttingForceRule,
  cuttingPowerRule,
  deepestByPowerRule,
  powerFromForceRule,
  drillTorqueRule,
  drillThrustRule,
  drillPowerRule,
  drillTorqueLawRule,
  removalPowerRule,
];
