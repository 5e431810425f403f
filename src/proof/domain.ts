/** The values that variables were seen to hold at one spot: more than any one set of rows holds there, never less. */

import { noRows, numbersIn, type ValueSet, type ValueSets } from './value-sets.ts';

export class Domain {
  /** Grows by one whenever a value comes that was not there before. */
  version = 0;
  private last: ValueSet = noRows;
  private readonly small: Int32Array;
  private readonly others: ReadonlyMap<number, Set<number>>;

  /** `levels`: those of the speed and of readings that are near. */
  constructor(
    private readonly sets: ValueSets,
    levels: readonly number[],
  ) {
    this.small = sets.noSmall();
    this.others = new Map(levels.map((level) => [level, new Set<number>()]));
  }

  include(rows: ValueSet): void {
    if (rows === this.last) return;
    this.last = rows;
    let added = this.sets.addSmall(rows, this.small);
    for (const [level, known] of this.others) {
      const before = known.size;
      for (const value of this.sets.valuesAt(rows, level)) known.add(value);
      added ||= known.size > before;
    }
    if (added) this.version += 1;
  }

  valuesAt(level: number): readonly number[] {
    const other = this.others.get(level);
    if (other) return [...other].sort((a, b) => a - b);
    return numbersIn(this.bits(level));
  }

  /** How many values there are at some levels: it grows when one of them does. */
  widthOf(levels: Iterable<number>): number {
    let sum = 0;
    for (const level of levels) sum += this.others.get(level)?.size ?? this.bits(level);
    return sum;
  }

  private bits(level: number): number {
    return ((this.small[level >> 2] ?? 0) >>> ((level & 3) * 8)) & 255;
  }
}
