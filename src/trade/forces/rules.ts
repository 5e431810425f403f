/** Cutting forces, torque and power. */

import type { Rule } from '../rule.ts';
import {
  drillPowerRule,
  drillThrustRule,
  drillTorqueLawRule,
  drillTorqueRule,
} from './drilling.ts';
import { removalPowerRule } from './energy.ts';
import {
  cuttingForceRule,
  cuttingPowerRule,
  deepestByPowerRule,
  powerFromForceRule,
  specificForceRule,
} from './kienzle.ts';

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
