/** What steps that do the same with the same sets share: their spots, and what was worked out for sets that came in. */

import type { JudgedStep, StepFinding } from './judge-step.ts';
import type { Move, SpotName } from './move.ts';
import { type Spot, Spots } from './spot.ts';
import type { Tree } from './tree.ts';
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

/**
 * A sentence is filled in from readings alone, wherever in the step it is said: what was seen of it is seen once.
 */
export interface SaidTrees {
  readonly trees: Map<string, Tree<boolean>>;
  /** What is asked at a spot, in order. */
  readonly asked: Map<Spot, readonly { readonly claim: string; readonly about: string }[]>;
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
  private readonly said = new Map<string, SaidTrees>();

  constructor(make: (name: SpotName) => Spot) {
    this.spots = new Spots(make);
  }

  /** `about`: the step, and all that its sentences and figures are made of. */
  saidTrees(about: string): SaidTrees {
    const old = this.said.get(about);
    if (old) return old;
    const made = { trees: new Map(), asked: new Map() };
    this.said.set(about, made);
    return made;
  }
}

/** One text for sets at spots. */
export function standingKey(rows: Iterable<readonly [Spot, ValueSet]>): string {
  return [...rows]
    .map(([{ inside }, set]) => `${inside}=${set}`)
    .sort()
    .join('|');
}
