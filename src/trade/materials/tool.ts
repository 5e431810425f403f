/** Tool materials and operations, and the columns of the speed table. */

export type ToolMaterial = 'hss' | 'carbide' | 'coated-carbide';

/** m/min by tool material; null where nobody gives a number. */
export type SpeedCell = readonly [hss: number, carbide: number | null, coated: number | null];

/** The columns that are stored; every operation is one of them times a factor. */
export interface SpeedColumns {
  readonly turn: SpeedCell;
  readonly drill: SpeedCell;
  readonly ream: SpeedCell;
  readonly mill: SpeedCell;
  readonly part: SpeedCell;
  readonly thread: SpeedCell;
  readonly tap: SpeedCell;
}

export type SpeedColumn = keyof SpeedColumns;

export interface ToolRow {
  readonly name: ToolMaterial;
  readonly title: string;
  readonly source: string;
}

const toolTable: readonly ToolRow[] = [
  { name: 'hss', title: 'high-speed steel', source: 'ISO 513 does not cover it; M2 and M35 tools' },
  { name: 'carbide', title: 'carbide without coating', source: 'ISO 513 (from memory): HW' },
  { name: 'coated-carbide', title: 'coated carbide', source: 'ISO 513 (from memory): HC' },
];

export const tools: readonly ToolMaterial[] = toolTable.map((row) => row.name);

export interface OperationRow {
  readonly name: string;
  readonly column: SpeedColumn;
  /** Times the column's speed. */
  readonly factor: number;
  readonly source: string;
}

const AS_TABLE = "as the table's column";

export const operationTable: readonly OperationRow[] = [
  { name: 'turn', column: 'turn', factor: 1, source: AS_TABLE },
  { name: 'face', column: 'turn', factor: 1, source: AS_TABLE },
  { name: 'chamfer', column: 'turn', factor: 1, source: AS_TABLE },
  { name: 'bore', column: 'turn', factor: 0.8, source: 'four fifths of turning: practice' },
  { name: 'knurl', column: 'turn', factor: 0.5, source: 'half of turning: practice' },
  { name: 'part', column: 'part', factor: 1, source: AS_TABLE },
  { name: 'groove', column: 'part', factor: 1, source: 'as parting: practice' },
  { name: 'thread', column: 'thread', factor: 1, source: AS_TABLE },
  { name: 'drill', column: 'drill', factor: 1, source: AS_TABLE },
  { name: 'centre-drill', column: 'drill', factor: 1, source: 'as drilling, on the pilot' },
  { name: 'spot-drill', column: 'drill', factor: 1, source: 'as drilling: practice' },
  { name: 'counterbore', column: 'drill', factor: 0.5, source: 'half of drilling: practice' },
  { name: 'countersink', column: 'drill', factor: 0.5, source: 'half of drilling: practice' },
  { name: 'ream', column: 'ream', factor: 1, source: AS_TABLE },
  { name: 'tap', column: 'tap', factor: 1, source: AS_TABLE },
  { name: 'mill', column: 'mill', factor: 1, source: AS_TABLE },
];

export const operations: readonly string[] = operationTable.map((row) => row.name);
