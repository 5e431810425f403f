/** The one table of rules that flows, screens, the command line and the docs read. */

import type { Language } from '../texts/index.ts';
import { batchRules } from './batch/rules.ts';
import { drillingRules } from './drilling/rules.ts';
import { fitRules } from './fits/rules.ts';
import { forceRules } from './forces/rules.ts';
import { formingRules } from './forming/rules.ts';
import { ruleIn } from './in-language.ts';
import { machineRules } from './machines/rules.ts';
import { materialRules } from './materials/rules.ts';
import { millingRules } from './milling/rules.ts';
import { nearestName } from './nearest.ts';
import type { Rule } from './rule.ts';
import { stiffnessRules } from './stiffness/rules.ts';
import { surfaceRules } from './surface/rules.ts';
import { taperRules } from './tapers/rules.ts';
import { thermalRules } from './thermal/rules.ts';
import { threadRules } from './threads/rules.ts';
import { turningRules } from './turning/rules.ts';

/** Every rule, by topic. Names are unique; a test holds that. */
export const rules: readonly Rule[] = [
  ...materialRules,
  ...turningRules,
  ...surfaceRules,
  ...forceRules,
  ...stiffnessRules,
  ...drillingRules,
  ...threadRules,
  ...taperRules,
  ...fitRules,
  ...thermalRules,
  ...formingRules,
  ...millingRules,
  ...machineRules,
  ...batchRules,
];

const byName: ReadonlyMap<string, Rule> = new Map(rules.map((rule) => [rule.name, rule]));

/** The rule of exactly this name, or undefined; in English unless another language is asked for. */
export function findRule(name: string, language?: Language): Rule | undefined {
  const rule = byName.get(name);
  if (!rule || language?.sentences === undefined) return rule;
  return keptIn(language, rule);
}

/** A flow asks for the same rules again and again. */
const kept = new WeakMap<Language, Map<string, Rule>>();

function keptIn(language: Language, rule: Rule): Rule {
  const known = kept.get(language) ?? new Map<string, Rule>();
  kept.set(language, known);
  const told = known.get(rule.name) ?? ruleIn(rule, language);
  known.set(rule.name, told);
  return told;
}

/** Every rule, by topic, in a language. */
export function rulesIn(language: Language): readonly Rule[] {
  return language.sentences === undefined ? rules : rules.map((rule) => keptIn(language, rule));
}

/** All names, in the order of the table. */
export function ruleNames(): readonly string[] {
  return rules.map((rule) => rule.name);
}

/** The name that a misspelt one probably meant, or undefined. */
export function nearestRule(name: string): string | undefined {
  return nearestName(name, ruleNames());
}
