/** The shape of one row of the materials table. */

import type { SpeedColumns } from './tool.ts';

/** ISO 513 letters for metals; O stands for plastics, which ISO 513 does not cover. */
export type CuttingGroup = 'P' | 'M' | 'K' | 'N' | 'S' | 'H' | 'O';

/** Kienzle constants for chip thickness 1 mm and width 1 mm, rake 0°. */
export interface SpecificForce {
  /** N/mm² */
  readonly kc: number;
  readonly mc: number;
}

/** One material: starting speeds in m/min and properties, each with its source. */
export interface Material {
  /** Kebab-case, as a question names it: "free-cutting-brass". */
  readonly name: string;
  readonly title: string;
  readonly iso: CuttingGroup;
  /** Number in VDI 3323; absent for plastics. */
  readonly group?: number;
  readonly speeds: SpeedColumns;
  /** Absent where no table gives it (plastics). */
  readonly force?: SpecificForce;
  /** Young's modulus, N/mm². */
  readonly modulus: number;
  /** Linear expansion, 1e-6 per kelvin. */
  readonly expansion: number;
  /** kg/m³ */
  readonly density: number;
  /** Cut without fluid as a habit, so "no coolant" takes nothing away. */
  readonly cutDry: boolean;
  readonly sources: MaterialSources;
}

/** Where the numbers of a row come from, with the published range where there is one. */
export interface MaterialSources {
  readonly turn: string;
  readonly hole: string;
  readonly mill: string;
  readonly part: string;
  readonly thread: string;
  readonly force: string;
  readonly modulus: string;
  readonly expansion: string;
  readonly density: string;
}
