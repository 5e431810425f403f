/** The inputs that name a material, a tool, an operation and the coolant. */

import { aChoice } from '../inputs.ts';
import type { RuleValues } from '../rule.ts';
import { wordOf } from '../values.ts';
import type { Question } from './cutting-speed.ts';
import { materialsSaid, operationsSaid, toolsSaid } from './said.ts';
import { materialNames } from './table.ts';
import { operations, type ToolMaterial, tools } from './tool.ts';

export const materialInput = {
  ...aChoice('material', materialNames, 'what is cut'),
  said: materialsSaid,
};
export const toolInput = {
  ...aChoice('tool', tools, 'what the tool is made of', { default: 'hss' }),
  said: toolsSaid,
};
export const operationInput = {
  ...aChoice('operation', operations, 'what is done'),
  said: operationsSaid,
};
export const coolantInput = {
  ...aChoice('coolant', ['yes', 'no'], 'whether fluid reaches the cut', { default: 'yes' }),
  said: { no: ['dry', 'no coolant', 'without coolant'], yes: ['wet', 'with coolant'] },
};

/** The tool material as a checked word. */
export function toolOf(values: RuleValues): ToolMaterial {
  const word = wordOf(values, 'tool');
  const tool = tools.find((one) => one === word);
  if (tool === undefined) throw new RangeError(`no tool "${word}" in the table`);
  return tool;
}

/** The question for the speed table, out of checked values. */
export function questionOf(values: RuleValues, operation: string): Question {
  return { tool: toolOf(values), operation, coolant: wordOf(values, 'coolant') === 'yes' };
}
