/** Temperature. */

import type { Rule } from '../rule.ts';
import { growthRule, sizeAtReferenceRule } from './growth.ts';

export const thermalRules: readonly Rule[] = [growthRule, sizeAtReferenceRule];
