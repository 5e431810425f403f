/**
 * Answers the trade's questions in numbers, with working, limit and source.
 * Never rounds for display, asks the time, or knows what a step, a voice or a screen is.
 */

export { answerRule } from './answer.ts';
export { readAsked } from './asked.ts';
export { describeAnswer, describeRule, explainAnswer } from './described.ts';
export { ruleIn } from './in-language.ts';
export type { Material } from './materials/material.ts';
export { optionSaid } from './materials/said.ts';
export { shopMaterialFaults, shopRanges, withShopMaterials } from './materials/shop.ts';
export { findMaterial, materialNames, materialTable } from './materials/table.ts';
export {
  operations,
  operationTable,
  type ToolMaterial,
  tools,
} from './materials/tool.ts';
export { type Measure, parseMeasure, parseMeasures } from './measure.ts';
export { nearestName } from './nearest.ts';
export type {
  ChoiceInput,
  ListInput,
  NumberInput,
  Quantity,
  Rule,
  RuleAnswer,
  RuleInput,
  RuleValue,
  RuleValues,
  TextInput,
  WorkingPart,
} from './rule.ts';
export { findRule, nearestRule, ruleNames, rules, rulesIn } from './table.ts';
export {
  baseUnitOf,
  findUnit,
  fromBase,
  quantities,
  quantityOfUnit,
  toBase,
  type Unit,
  unitsOf,
} from './units.ts';
