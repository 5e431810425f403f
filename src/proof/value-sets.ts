/**
 * Sets of situations, each a row of small numbers: one for every fact, for the speed, for readings that matter.
 *
 * A set is a node of a decision diagram (diagram.ts): the row's number at the node's level chooses the child, and equal
 * sets are equal numbers. A level at which all rows hold 0 (not known, not taken) has no node: rows cost what they know.
 * The alternative, lists of rows, is what explodes: ten facts that may each be lost are a thousand rows, and eleven nodes.
 */

import { worded } from '../texts/index.ts';
import { bottom, Diagram, type NodeId, noNode, zeroNode } from './diagram.ts';
import { emptyList, type ListId, NumberLists, zeroList } from './number-lists.ts';
import { Recent } from './recent.ts';
import { TooLarge } from './walk-limits.ts';

/** A set; only numbers from the same ValueSets may meet. */
export type ValueSet = NodeId;

/** Level and number, by rising level. */
export type Row = readonly (readonly [level: number, value: number])[];

export const noRows: ValueSet = noNode;
/** The one row that holds 0 everywhere. */
export const zeroRow: ValueSet = zeroNode;

/** Numbers at one level, at most; readings take the most. */
export const widest = 4096;
/** Values that one event sets, at most. */
const longestRow = 256;

export class ValueSets {
  private readonly nodes: Diagram;
  private readonly unions = new Recent(16);
  private readonly differences = new Recent(15);
  private readonly parts = new Recent(16);
  private readonly changes = new Recent(16);
  private readonly found = new Recent(15);
  private readonly comings = new Recent(15);
  private readonly rows = new Map<Row, number>();
  readonly lists = new NumberLists();

  /** `small`: the upper levels, whose numbers are below 8. */
  constructor(private readonly small = 0) {
    this.nodes = new Diagram(small);
  }

  /** Nodes made so far: the memory of a proof. */
  get size(): number {
    return this.nodes.size;
  }

  union(a: ValueSet, b: ValueSet): ValueSet {
    if (a === b || b === noRows) return a;
    if (a === noRows) return b;
    const low = a < b ? a : b;
    const high = a < b ? b : a;
    const old = this.unions.get(low, high);
    if (old >= 0) return old;
    const { nodes } = this;
    const level = Math.min(nodes.level(a), nodes.level(b));
    const width = Math.max(nodes.width(a, level), nodes.width(b, level));
    const from = nodes.open();
    for (let value = 0; value < width; value += 1) {
      nodes.put(this.union(nodes.child(a, level, value), nodes.child(b, level, value)));
    }
    const made = nodes.close(level, from);
    this.unions.set(low, high, made);
    return made;
  }

  /** The rows of `a` that are not in `b`. */
  minus(a: ValueSet, b: ValueSet): ValueSet {
    if (a === b || a === noRows) return noRows;
    if (b === noRows) return a;
    const old = this.differences.get(a, b);
    if (old >= 0) return old;
    const { nodes } = this;
    const level = Math.min(nodes.level(a), nodes.level(b));
    const width = nodes.width(a, level);
    const from = nodes.open();
    for (let value = 0; value < width; value += 1) {
      nodes.put(this.minus(nodes.child(a, level, value), nodes.child(b, level, value)));
    }
    const made = nodes.close(level, from);
    this.differences.set(a, b, made);
    return made;
  }

  both(a: ValueSet, b: ValueSet): ValueSet {
    return this.minus(a, this.minus(a, b));
  }

  /** The rows that hold `value` at `level`. */
  where(set: ValueSet, level: number, value: number): ValueSet {
    const { nodes } = this;
    const own = nodes.level(set);
    if (own > level) return value === 0 ? set : noRows;
    const key = level * widest + value;
    const old = this.parts.get(set, key);
    if (old >= 0) return old;
    const from = nodes.open();
    for (let at = 0, width = nodes.width(set, own); at < width; at += 1) {
      const child = nodes.child(set, own, at);
      nodes.put(own < level ? this.where(child, level, value) : at === value ? child : noRows);
    }
    const made = nodes.close(own, from);
    this.parts.set(set, key, made);
    return made;
  }

  /** All rows, with `value` put at `level`. */
  with(set: ValueSet, level: number, value: number): ValueSet {
    if (set === noRows) return noRows;
    const key = level * widest + value;
    const old = this.changes.get(set, key);
    if (old >= 0) return old;
    const { nodes } = this;
    const own = nodes.level(set);
    const made =
      own < level ? this.withBelow(set, own, level, value) : this.withHere(set, own, level, value);
    this.changes.set(set, key, made);
    return made;
  }

  private withBelow(set: ValueSet, own: number, level: number, value: number): ValueSet {
    const { nodes } = this;
    const from = nodes.open();
    for (let at = 0, width = nodes.width(set, own); at < width; at += 1) {
      nodes.put(this.with(nodes.child(set, own, at), level, value));
    }
    return nodes.close(own, from);
  }

  private withHere(set: ValueSet, own: number, level: number, value: number): ValueSet {
    const { nodes } = this;
    let rest = own > level ? set : noRows;
    if (own === level) {
      for (let at = 0, width = nodes.width(set, own); at < width; at += 1) {
        rest = this.union(rest, nodes.child(set, own, at));
      }
    }
    const from = nodes.open();
    for (let at = 0; at < value; at += 1) nodes.put(noRows);
    nodes.put(rest);
    return nodes.close(level, from);
  }

  /** All rows, with a whole row of numbers put in. */
  withAll(set: ValueSet, row: Row): ValueSet {
    let made = set;
    for (const [level, value] of row) made = this.with(made, level, value);
    return made;
  }

  whereAll(set: ValueSet, row: Row): ValueSet {
    let made = set;
    for (const [level, value] of row) {
      if (made === noRows) return made;
      made = this.where(made, level, value);
    }
    return made;
  }

  /** The numbers that rows hold at `level`, rising. */
  valuesAt(set: ValueSet, level: number): readonly number[] {
    if (level < this.small) return numbersIn(this.nodes.smallValues(set, level));
    return this.lists.at(this.listAt(set, level));
  }

  /** The same below the upper levels, as one of `lists`. */
  listAt(set: ValueSet, level: number): ListId {
    if (set === noRows) return emptyList;
    const { nodes, lists } = this;
    const own = nodes.level(set);
    if (own > level) return zeroList;
    const old = this.found.get(set, level);
    if (old >= 0) return old;
    const width = nodes.width(set, own);
    let made = emptyList;
    if (own === level) {
      const held = Array.from({ length: width }, (_, value) => value);
      made = lists.idOf(held.filter((value) => nodes.child(set, own, value) !== noRows));
    } else {
      for (let value = 0; value < width; value += 1) {
        made = lists.union(made, this.listAt(nodes.child(set, own, value), level));
      }
    }
    this.found.set(set, level, made);
    return made;
  }

  /** No values at the upper levels yet; for `addSmall`. */
  noSmall(): Int32Array {
    return this.nodes.noValues();
  }

  /** Adds what the rows hold at the upper levels; true where there was anything new. */
  addSmall(set: ValueSet, known: Int32Array): boolean {
    return this.nodes.addValues(set, known);
  }

  /** The rows of `from` that are in `into` once `row` is put in. `row` is by rising level. */
  comingInto(from: ValueSet, into: ValueSet, row: Row): ValueSet {
    return this.coming(from, into, row, 0, this.idOfRow(row) * longestRow);
  }

  /** From place `at` of the row on; `known` is a number of its own for each row. */
  private coming(a: ValueSet, b: ValueSet, row: Row, at: number, known: number): ValueSet {
    if (a === noRows || b === noRows) return noRows;
    const put = row[at];
    if (put === undefined && a === b) return a;
    const { nodes } = this;
    const level = Math.min(nodes.level(a), nodes.level(b), put?.[0] ?? bottom);
    if (level === bottom) return a;
    const old = this.comings.get(a, b, known + at);
    if (old >= 0) return old;
    const changed = put?.[0] === level;
    const next = changed ? at + 1 : at;
    const open = nodes.open();
    for (let value = 0, width = nodes.width(a, level); value < width; value += 1) {
      const end = nodes.child(b, level, changed ? put[1] : value);
      nodes.put(this.coming(nodes.child(a, level, value), end, row, next, known));
    }
    const made = nodes.close(level, open);
    this.comings.set(a, b, made, known + at);
    return made;
  }

  private idOfRow(row: Row): number {
    const old = this.rows.get(row);
    if (old !== undefined) return old;
    if (row.length >= longestRow)
      throw new TooLarge(worded`More than ${longestRow} values are set at once.`);
    this.rows.set(row, this.rows.size);
    return this.rows.size - 1;
  }

  /** One row, but for its zeros. */
  first(set: ValueSet): Row {
    const row: [number, number][] = [];
    for (let at = set; at > zeroRow; ) {
      const level = this.nodes.level(at);
      let value = 0;
      while (this.nodes.child(at, level, value) === noRows) value += 1;
      if (value !== 0) row.push([level, value]);
      at = this.nodes.child(at, level, value);
    }
    return row;
  }

  /** The set of one row. */
  only(row: Row): ValueSet {
    return this.withAll(zeroRow, row);
  }

  /** How many rows there are; large counts are rounded as numbers are. */
  count(set: ValueSet, known = new Map<ValueSet, number>()): number {
    if (set <= zeroRow) return set;
    const old = known.get(set);
    if (old !== undefined) return old;
    const level = this.nodes.level(set);
    let sum = 0;
    for (let value = 0, width = this.nodes.width(set, level); value < width; value += 1) {
      sum += this.count(this.nodes.child(set, level, value), known);
    }
    known.set(set, sum);
    return sum;
  }
}

/** The numbers whose bits are set, for every byte. */
const numbers: readonly (readonly number[])[] = Array.from({ length: 256 }, (_, bits) =>
  [0, 1, 2, 3, 4, 5, 6, 7].filter((value) => (bits >> value) & 1),
);

export function numbersIn(bits: number): readonly number[] {
  return numbers[bits & 255] ?? [];
}
