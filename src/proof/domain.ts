/** The values that variables were seen to hold at one spot: more than any one set of rows holds there, never less. */

import { emptyList, type ListId } from './number-lists.ts';
import { noRows, numbersIn, type ValueSet, type ValueSets } from './value-sets.ts';

export class Domain {
  /** Grows by one whenever a value comes that was not there before. */
  version = 0;
  private last: ValueSet = noRows;
  private readonly small: Int32Array;
  private readonly others: Map<number, ListId>;

  /** `levels`: those of the speed and of readings that are near. */
  constructor(
    private readonly sets: ValueSets,
    levels: readonly number[],
  ) {
    this.small = sets.noSmall();
    this.others = new Map(levels.map((level) => [level, emptyList]));
  }

  include(rows: ValueSet): void {
    if (rows === this.last) return;
    this.last = rows;
    let added = this.sets.addSmall(rows, this.small);
    for (const [level, before] of this.others) {
      const after = this.sets.lists.union(before, this.sets.listAt(rows, level));
      if (after === before) continue;
      this.others.set(level, after);
      added = true;
    }
    if (added) this.version += 1;
  }

  /** Rising; the same values are one and the same list. */
  valuesAt(level: number): readonly number[] {
    const other = this.others.get(level);
    if (other !== undefined) return this.sets.lists.at(other);
    const word = this.small[level >> 2] ?? 0;
    return numbersIn(word >>> ((level & 3) * 8));
  }
}
