/** One state of the chart inside a step, and what is known of it for every set of rows that may stand there. */

import type { Phase } from '../flow/index.ts';
import type { Domain } from './domain.ts';
import type { Grown } from './grown.ts';
import { insideOf, type Move, type SpotName } from './move.ts';
import type { SpotTrees } from './spot-trees.ts';
import type { Said } from './step-walk.ts';
import type { ValueSet } from './value-sets.ts';

export type Parted = readonly [move: Move, rows: ValueSet];

export interface Spot extends SpotName {
  /** Its name among the spots of its step. */
  readonly inside: string;
  readonly phase: Phase;
  readonly trees: SpotTrees;
  /** Every value that came here, in any proof. */
  readonly domain: Domain;
  /** By event, what it does with which values; grown for a version of the domain. */
  readonly grown: Map<string, { readonly version: number; readonly grown: Grown<Move> }>;
  /** By event, the rows it was last played for, parted by what it does. */
  readonly parts: Map<string, { readonly rows: ValueSet; readonly parts: readonly Parted[] }>;
  /** What is heard here, but for sizes. */
  words?: readonly Said[];
  /** The sizes last tried, and for which rows. */
  sized?: { readonly rows: ValueSet; readonly said: readonly Said[] };
}

/** Spots of one kind of step by name. */
export class Spots {
  private readonly all = new Map<string, Spot>();

  constructor(private readonly make: (name: SpotName) => Spot) {}

  at(name: SpotName): Spot {
    const inside = insideOf(name);
    const old = this.all.get(inside);
    if (old) return old;
    const made = this.make(name);
    this.all.set(inside, made);
    return made;
  }
}
