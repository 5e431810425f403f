/** The rules of this topic. */

import type { Rule } from '../rule.ts';

export const taperRules: readonly Rule[] = [];
