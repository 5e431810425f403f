/**
 * Sets of situations, each a row of small numbers: one for every fact, for the speed, for readings that matter.
 *
 * A set is a node of a decision diagram: the row's number at the node's level chooses the child, and equal nodes are one
 * node, so that equal sets are equal numbers. A level at which all rows hold 0 (not known, not taken) has no node:
 * rows cost what they know. The alternative, lists of rows, is what explodes: ten facts that may each be lost are a
 * thousand rows, and eleven nodes.
 */

/** A set; only numbers from the same ValueSets may meet. */
export type ValueSet = number;

/** Level and number, by rising level. */
export type Row = readonly (readonly [level: number, value: number])[];

export const noRows: ValueSet = 0;
/** The one row that holds 0 everywhere. */
export const zeroRow: ValueSet = 1;

/** Below every level. */
const bottom = 1 << 20;
const most = 1 << 22;

export class ValueSets {
  private readonly levels: number[] = [bottom, bottom];
  private readonly children: (readonly ValueSet[])[] = [[], []];
  private readonly known = new Map<string, ValueSet>();
  /** By level, nodes of two children: most facts are so or not so. */
  private readonly pairs: Map<number, ValueSet>[] = [];
  private readonly comings = new Map<string, ValueSet>();
  private readonly unions = new Recent();
  private readonly differences = new Recent();
  private readonly parts: Map<ValueSet, ValueSet>[] = [];
  private readonly changes: Map<ValueSet, ValueSet>[] = [];
  private readonly found: Map<ValueSet, readonly number[]>[] = [];

  /** Nodes made so far: the memory of a proof. */
  get size(): number {
    return this.levels.length;
  }

  private node(level: number, children: readonly ValueSet[]): ValueSet {
    let length = children.length;
    while (length > 0 && children[length - 1] === noRows) length -= 1;
    if (length === 0) return noRows;
    if (length === 1) return children[0] ?? noRows;
    const kept = children.length === length ? children : children.slice(0, length);
    if (length === 2) {
      const pairs = at(this.pairs, level);
      const pair = (kept[0] ?? noRows) * most + (kept[1] ?? noRows);
      const old = pairs.get(pair);
      if (old !== undefined) return old;
      const made = this.make(level, kept);
      pairs.set(pair, made);
      return made;
    }
    const key = `${level}:${kept.join()}`;
    const old = this.known.get(key);
    if (old !== undefined) return old;
    const made = this.make(level, kept);
    this.known.set(key, made);
    return made;
  }

  private make(level: number, children: readonly ValueSet[]): ValueSet {
    const made = this.levels.length;
    if (made >= most) throw new RangeError(`More than ${most} nodes.`);
    this.levels.push(level);
    this.children.push(children);
    return made;
  }

  private levelOf(set: ValueSet): number {
    return this.levels[set] ?? bottom;
  }

  /** The rows that hold `value` at `level`, seen from there on; a set without a node there holds 0. */
  private child(set: ValueSet, level: number, value: number): ValueSet {
    if (this.levelOf(set) !== level) return value === 0 ? set : noRows;
    return this.children[set]?.[value] ?? noRows;
  }

  private width(set: ValueSet, level: number): number {
    return this.levelOf(set) === level ? (this.children[set]?.length ?? 0) : 1;
  }

  union(a: ValueSet, b: ValueSet): ValueSet {
    if (a === b || b === noRows) return a;
    if (a === noRows) return b;
    const [low, high] = a < b ? [a, b] : [b, a];
    const old = this.unions.get(low, high);
    if (old >= 0) return old;
    const level = Math.min(this.levelOf(a), this.levelOf(b));
    const width = Math.max(this.width(a, level), this.width(b, level));
    const children: ValueSet[] = [];
    for (let value = 0; value < width; value += 1) {
      children.push(this.union(this.child(a, level, value), this.child(b, level, value)));
    }
    const made = this.node(level, children);
    this.unions.set(low, high, made);
    return made;
  }

  /** The rows of `a` that are not in `b`. */
  minus(a: ValueSet, b: ValueSet): ValueSet {
    if (a === b || a === noRows) return noRows;
    if (b === noRows) return a;
    const old = this.differences.get(a, b);
    if (old >= 0) return old;
    const level = Math.min(this.levelOf(a), this.levelOf(b));
    const width = this.width(a, level);
    const children: ValueSet[] = [];
    for (let value = 0; value < width; value += 1) {
      children.push(this.minus(this.child(a, level, value), this.child(b, level, value)));
    }
    const made = this.node(level, children);
    this.differences.set(a, b, made);
    return made;
  }

  both(a: ValueSet, b: ValueSet): ValueSet {
    return this.minus(a, this.minus(a, b));
  }

  /** The rows that hold `value` at `level`. */
  where(set: ValueSet, level: number, value: number): ValueSet {
    const own = this.levelOf(set);
    if (own > level) return value === 0 ? set : noRows;
    const known = at(this.parts, level * widest + value);
    const old = known.get(set);
    if (old !== undefined) return old;
    const children = this.children[set] ?? [];
    const made = this.node(
      own,
      own === level
        ? children.map((child, at) => (at === value ? child : noRows))
        : children.map((child) => this.where(child, level, value)),
    );
    known.set(set, made);
    return made;
  }

  /** All rows, with `value` put at `level`. */
  with(set: ValueSet, level: number, value: number): ValueSet {
    if (set === noRows) return noRows;
    const own = this.levelOf(set);
    const known = at(this.changes, level * widest + value);
    const old = known.get(set);
    if (old !== undefined) return old;
    const children = this.children[set] ?? [];
    let made: ValueSet;
    if (own < level)
      made = this.node(
        own,
        children.map((child) => this.with(child, level, value)),
      );
    else {
      const rest = own > level ? set : children.reduce((a, b) => this.union(a, b), noRows);
      made =
        value === 0 ? rest : this.node(level, [...new Array<ValueSet>(value).fill(noRows), rest]);
    }
    known.set(set, made);
    return made;
  }

  /** All rows, with a whole row of numbers put in. */
  withAll(set: ValueSet, row: Row): ValueSet {
    let made = set;
    for (const [level, value] of row) made = this.with(made, level, value);
    return made;
  }

  whereAll(set: ValueSet, row: Row): ValueSet {
    let made = set;
    for (const [level, value] of row) made = this.where(made, level, value);
    return made;
  }

  /** The numbers that rows hold at `level`. */
  valuesAt(set: ValueSet, level: number): readonly number[] {
    if (set === noRows) return [];
    const own = this.levelOf(set);
    if (own > level) return [0];
    const known = at(this.found, level);
    const old = known.get(set);
    if (old !== undefined) return old;
    const children = this.children[set] ?? [];
    const values = new Set<number>();
    children.forEach((child, value) => {
      if (child === noRows) return;
      if (own === level) values.add(value);
      else for (const one of this.valuesAt(child, level)) values.add(one);
    });
    const made = [...values].sort((a, b) => a - b);
    known.set(set, made);
    return made;
  }

  /** The rows of `from` that are in `into` once `row` is put in. `row` is by rising level. */
  comingInto(from: ValueSet, into: ValueSet, row: Row): ValueSet {
    const key = `${from} ${into} ${row.join()}`;
    const old = this.comings.get(key);
    if (old !== undefined) return old;
    const made = this.findComing(from, into, row);
    this.comings.set(key, made);
    return made;
  }

  private findComing(from: ValueSet, into: ValueSet, row: Row): ValueSet {
    const known = new Map<number, ValueSet>();
    const come = (a: ValueSet, b: ValueSet, at: number): ValueSet => {
      if (a === noRows || b === noRows) return noRows;
      const put = row[at];
      if (put === undefined && a === b) return a;
      if (put === undefined && a === zeroRow && b === zeroRow) return zeroRow;
      const key = (a * most + b) * 32 + Math.min(at, 31);
      const old = known.get(key);
      if (old !== undefined && at < 31) return old;
      const level = Math.min(this.levelOf(a), this.levelOf(b), put?.[0] ?? bottom);
      if (level === bottom) return a;
      const changed = put?.[0] === level;
      const children: ValueSet[] = [];
      const width = this.width(a, level);
      for (let value = 0; value < width; value += 1) {
        const end = this.child(b, level, changed ? put[1] : value);
        children.push(come(this.child(a, level, value), end, changed ? at + 1 : at));
      }
      const made = this.node(level, children);
      known.set(key, made);
      return made;
    };
    return come(from, into, 0);
  }

  /** One row, but for its zeros. */
  first(set: ValueSet): Row {
    const row: [number, number][] = [];
    for (let at = set; at > zeroRow; ) {
      const children = this.children[at] ?? [];
      const value = children.findIndex((child) => child !== noRows);
      if (value !== 0) row.push([this.levelOf(at), value]);
      at = children[value] ?? noRows;
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
    const sum = (this.children[set] ?? []).reduce(
      (total, one) => total + this.count(one, known),
      0,
    );
    known.set(set, sum);
    return sum;
  }
}

/** Values at one level, at most; readings take the most. */
const widest = 4096;

function at<K, V>(maps: Map<K, V>[], index: number): Map<K, V> {
  const old = maps[index];
  if (old) return old;
  const made = new Map<K, V>();
  maps[index] = made;
  return made;
}

/** The last answers for two sets: each pair has one place, and a new pair takes it over. */
class Recent {
  private readonly size = 1 << 15;
  private readonly pairs = new Int32Array(this.size * 3).fill(-1);

  get(a: number, b: number): number {
    const place = this.placeOf(a, b);
    return this.pairs[place] === a && this.pairs[place + 1] === b
      ? (this.pairs[place + 2] ?? -1)
      : -1;
  }

  set(a: number, b: number, answer: number): void {
    const place = this.placeOf(a, b);
    this.pairs[place] = a;
    this.pairs[place + 1] = b;
    this.pairs[place + 2] = answer;
  }

  private placeOf(a: number, b: number): number {
    const mixed = Math.imul(a, 0x9e3779b1) ^ Math.imul(b, 0x85ebca6b);
    return ((mixed ^ (mixed >>> 15)) & (this.size - 1)) * 3;
  }
}
