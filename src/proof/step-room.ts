/** What steps that do the same with the same sets share: their spots, and what was worked out for sets that came in. */

import type { JudgedStep, StepFinding } from './judge-step.ts';
import type { Move, SpotName } from './move.ts';
import { type Spot, Spots } from './spot.ts';
import type { Row, ValueSet } from './value-sets.ts';

/** Where rows stand in a step, and which of them leave it: complete for what came in. */
export interface Closed {
  readonly rows: ReadonlyMap<Spot, ValueSet>;
  readonly exits: readonly Exit[];
}

/** Rows that leave into another step. */
export interface Exit {
  readonly slot: number;
  readonly name: SpotName;
  readonly rows: ValueSet;
}

export class StepRoom {
  readonly spots: Spots;
  /** By what came in. */
  readonly closed = new Map<string, Closed>();
  /** By what stands where. */
  readonly judged = new Map<string, JudgedStep>();
  /** By what stands where, and all that its sentences and figures are made of. */
  readonly texts = new Map<string, readonly StepFinding[]>();
  readonly puts = new Map<Move, Row>();

  constructor(make: (name: SpotName) => Spot) {
    this.spots = new Spots(make);
  }
}

/** One text for sets at spots. */
export function standingKey(rows: Iterable<readonly [Spot, ValueSet]>): string {
  return [...rows]
    .map(([{ inside }, set]) => `${inside}=${set}`)
    .sort()
    .join('|');
}
