/** The rules of grooves, knurls, chamfers, radii and eccentrics. */

import type { Rule } from '../rule.ts';
import { chamfer } from './chamfer.ts';
import { eccentricPacking } from './eccentric-packing.ts';
import { groovePlan } from './groove.ts';
import { knurlBlank, knurlDiametral, knurlFromWheel } from './knurl.ts';
import { radiusSteps } from './radius-steps.ts';

export const formingRules: readonly Rule[] = [
  groovePlan,
  knurlBlank,
  knurlDiametral,
  knurlFromWheel,
  chamfer,
  radiusSteps,
  eccentricPacking,
];
