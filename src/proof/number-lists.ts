/** Lists of rising numbers, each told by one small number: equal lists are one list. */

import { Recent } from './recent.ts';

/** A list; only ids from the same NumberLists may meet. */
export type ListId = number;

export const emptyList: ListId = 0;
/** The list of the one number 0. */
export const zeroList: ListId = 1;

export class NumberLists {
  private readonly lists: (readonly number[])[] = [[], [0]];
  private readonly ids = new Map<string, ListId>([
    ['', emptyList],
    ['0', zeroList],
  ]);
  private readonly unions = new Recent(12);

  at(id: ListId): readonly number[] {
    return this.lists[id] ?? [];
  }

  /** `numbers` rise. */
  idOf(numbers: readonly number[]): ListId {
    const key = numbers.join();
    const old = this.ids.get(key);
    if (old !== undefined) return old;
    const made = this.lists.length;
    this.ids.set(key, made);
    this.lists.push(numbers);
    return made;
  }

  union(a: ListId, b: ListId): ListId {
    if (a === b || b === emptyList) return a;
    if (a === emptyList) return b;
    const low = Math.min(a, b);
    const high = Math.max(a, b);
    const old = this.unions.get(low, high);
    if (old >= 0) return old;
    const both = new Set([...this.at(low), ...this.at(high)]);
    const made = this.idOf([...both].sort((x, y) => x - y));
    this.unions.set(low, high, made);
    return made;
  }
}
