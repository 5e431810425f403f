/** The starting cutting speed for a material, a tool and an operation. */

import { sequence, worded } from '../../texts/index.ts';
import type { Worked } from '../rule.ts';
import { show } from '../show.ts';
import { fault } from '../values.ts';
import type { Material } from './material.ts';
import { type OperationRow, operationTable, type SpeedColumn, type ToolMaterial } from './tool.ts';

/** Share of the speed that is left when a fluid is wanted and there is none; common practice, no source. */
export const DRY_SHARE = 0.75;

export interface Question {
  readonly tool: ToolMaterial;
  /** One of the operations in the operation table. */
  readonly operation: string;
  /** Whether fluid reaches the cut. */
  readonly coolant: boolean;
}

const SOURCE_OF: Readonly<Record<SpeedColumn, keyof Material['sources']>> = {
  turn: 'turn',
  drill: 'hole',
  ream: 'hole',
  mill: 'mill',
  part: 'part',
  thread: 'thread',
  tap: 'thread',
};

/** The operation's row. A miss is our own mistake: the input checks the word. */
export function operationNamed(name: string): OperationRow {
  const row = operationTable.find((one) => one.name === name);
  if (row === undefined) throw new RangeError(`no operation "${name}" in the table`);
  return row;
}

/** Where this speed comes from, for the line under the answer. */
export function speedSource(material: Material, operation: string): string {
  return material.sources[SOURCE_OF[operationNamed(operation).column]];
}

function inCell(material: Material, column: SpeedColumn, tool: ToolMaterial): number | null {
  const [hss, carbide, coated] = material.speeds[column];
  if (tool === 'hss') return hss;
  return tool === 'carbide' ? carbide : coated;
}

/** A dry cut costs speed only where a fluid is the habit: high-speed steel in materials not cut dry. */
function dryShare(material: Material, { tool, coolant }: Question): number {
  return coolant || material.cutDry || tool !== 'hss' ? 1 : DRY_SHARE;
}

/**
 * Cutting speed in m/min out of the materials table, by the rules of the operation table; knurls
 * are always asked as high-speed steel. The fault names a tool that the table does not have.
 */
export function cuttingSpeed(material: Material, question: Question): Worked {
  const { column, factor, name } = operationNamed(question.operation);
  const tool = name === 'knurl' ? 'hss' : question.tool;
  const listed = inCell(material, column, tool);
  if (listed === null) {
    return fault(
      worded`The table has no ${question.operation} speed with ${tool} in ${material.title}; ask with tool hss.`,
    );
  }
  const dry = dryShare(material, question);
  const steps = [worded`${listed} m/min`];
  if (factor !== 1) steps.push(worded`× ${factor} for ${name}`);
  if (dry !== 1) steps.push(worded`× ${dry} without coolant`);
  const value = listed * factor * dry;
  const sum = steps.length > 1 ? worded` = ${show(value, 3)} m/min` : '';
  const working = worded`${material.title}, ${tool}, ${name}: ${sequence(steps, ' ')}${sum}`;
  return { ok: true, value, working, source: speedSource(material, name) };
}
