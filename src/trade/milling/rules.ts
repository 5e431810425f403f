/** The rules of this topic. */

import type { Rule } from '../rule.ts';

export const millingRules: readonly Rule[] = [];
