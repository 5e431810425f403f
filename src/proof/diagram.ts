/**
 * Nodes of a decision diagram in flat arrays: a node has a level and children, equal nodes are one node, and each knows
 * which small numbers its rows hold at the upper levels. Objects would cost five times the room and the time.
 */

/** A node; 0 holds no rows, 1 the one row that is 0 from there on. */
export type NodeId = number;

export const noNode: NodeId = 0;
export const zeroNode: NodeId = 1;

/** Below every level. */
export const bottom = 1 << 20;
/** Nodes at most, since pairs of them are told as one number. */
const mostNodes = 1 << 22;
const perWord = 4;

export class Diagram {
  private levels = new Int32Array(1 << 12);
  private starts = new Int32Array(1 << 12);
  private widths = new Int32Array(1 << 12);
  private children = new Int32Array(1 << 14);
  private held: Int32Array<ArrayBuffer>;
  private table = new Int32Array(1 << 13);
  private childrenUsed = 0;
  private used = 2;
  private readonly words: number;
  /** By level: the bits of value 0 for all levels above it. */
  private readonly zeros: Int32Array;
  /** Children of nodes that are being made; makers put theirs on top, and take them off again. */
  private stack = new Int32Array(1 << 12);
  private top = 0;

  /** `small`: so many upper levels hold numbers below 8, and their values are kept with every node. */
  constructor(private readonly small: number) {
    this.words = Math.ceil(small / perWord);
    this.held = new Int32Array((1 << 12) * this.words);
    this.zeros = new Int32Array((small + 1) * this.words);
    for (let level = 1; level <= small; level += 1) {
      for (let above = 0; above < level; above += 1) {
        const word = level * this.words + (above >> 2);
        this.zeros[word] = (this.zeros[word] ?? 0) | (1 << ((above & 3) * 8));
      }
    }
    this.levels[noNode] = bottom;
    this.levels[zeroNode] = bottom;
  }

  get size(): number {
    return this.used;
  }

  level(node: NodeId): number {
    return this.levels[node] ?? bottom;
  }

  /** How many children stand at a level of its own; one elsewhere. */
  width(node: NodeId, level: number): number {
    return this.levels[node] === level ? (this.widths[node] ?? 1) : 1;
  }

  /** The rows that hold `value` at `level`, seen from there on; a node of a lower level holds 0. */
  child(node: NodeId, level: number, value: number): NodeId {
    if (this.levels[node] !== level) return value === 0 ? node : noNode;
    if (value >= (this.widths[node] ?? 0)) return noNode;
    return this.children[(this.starts[node] ?? 0) + value] ?? noNode;
  }

  /** Bits of the values that rows hold at one of the upper levels. */
  smallValues(node: NodeId, level: number): number {
    if (node === noNode) return 0;
    return (this.word(node, level >> 2) >>> ((level & 3) * 8)) & 255;
  }

  /** True where every value that `node` holds at an upper level is among `known`; adds it where not. */
  addValues(node: NodeId, known: Int32Array): boolean {
    let added = false;
    for (let word = 0; word < this.words; word += 1) {
      const before = known[word] ?? 0;
      const after = before | this.word(node, word);
      if (after === before) continue;
      known[word] = after;
      added = true;
    }
    return added;
  }

  noValues(): Int32Array {
    return new Int32Array(this.words);
  }

  private word(node: NodeId, word: number): number {
    if (node === noNode) return 0;
    const above = Math.min(this.levels[node] ?? 0, this.small) * this.words + word;
    return (this.held[node * this.words + word] ?? 0) | (this.zeros[above] ?? 0);
  }

  /** Begins a list of children; `put` adds to it, and `close` makes it a node. */
  open(): number {
    return this.top;
  }

  put(child: NodeId): void {
    if (this.top === this.stack.length) this.stack = grown(this.stack);
    this.stack[this.top++] = child;
  }

  close(level: number, from: number): NodeId {
    let end = this.top;
    this.top = from;
    while (end > from && this.stack[end - 1] === noNode) end -= 1;
    if (end === from) return noNode;
    if (end === from + 1) return this.stack[from] ?? noNode;
    return this.find(level, from, end - from);
  }

  private find(level: number, from: number, width: number): NodeId {
    let mixed = Math.imul(level + 1, 0x9e3779b1);
    for (let at = from; at < from + width; at += 1) {
      mixed = Math.imul(mixed ^ (this.stack[at] ?? 0), 0x85ebca6b);
      mixed ^= mixed >>> 13;
    }
    const mask = this.table.length - 1;
    let place = mixed & mask;
    for (let node = this.table[place] ?? 0; node !== 0; node = this.table[place] ?? 0) {
      if (this.isSame(node, level, from, width)) return node;
      place = (place + 1) & mask;
    }
    const made = this.make(level, from, width);
    this.table[place] = made;
    if (this.used * 2 > this.table.length) this.rehash();
    return made;
  }

  private isSame(node: NodeId, level: number, from: number, width: number): boolean {
    if (this.levels[node] !== level || this.widths[node] !== width) return false;
    const start = this.starts[node] ?? 0;
    for (let at = 0; at < width; at += 1) {
      if (this.children[start + at] !== this.stack[from + at]) return false;
    }
    return true;
  }

  private make(level: number, from: number, width: number): NodeId {
    const made = this.used;
    if (made >= mostNodes) throw new RangeError(`More than ${mostNodes} nodes.`);
    this.used += 1;
    if (made === this.levels.length) this.growNodes();
    while (this.childrenUsed + width > this.children.length) this.children = grown(this.children);
    this.levels[made] = level;
    this.starts[made] = this.childrenUsed;
    this.widths[made] = width;
    this.children.set(this.stack.subarray(from, from + width), this.childrenUsed);
    this.childrenUsed += width;
    this.keepValues(made, level, width);
    return made;
  }

  /** What its children hold, its own values, and 0 for the levels that a child leaves out. */
  private keepValues(made: NodeId, level: number, width: number): void {
    const below = Math.min(level + 1, this.small) * this.words;
    for (let value = 0; value < width; value += 1) {
      const child = this.child(made, level, value);
      if (child === noNode) continue;
      for (let word = 0; word < this.words; word += 1) {
        const at = made * this.words + word;
        const kept = this.word(child, word) & ~(this.zeros[below + word] ?? 0);
        this.held[at] = (this.held[at] ?? 0) | kept;
      }
      if (level < this.small) {
        const at = made * this.words + (level >> 2);
        this.held[at] = (this.held[at] ?? 0) | (1 << ((level & 3) * 8 + value));
      }
    }
  }

  private growNodes(): void {
    this.levels = grown(this.levels);
    this.starts = grown(this.starts);
    this.widths = grown(this.widths);
    this.held = grown(this.held);
  }

  private rehash(): void {
    const old = this.table;
    this.table = new Int32Array(old.length * 2);
    const mask = this.table.length - 1;
    for (let node = 2; node < this.used; node += 1) {
      let place = this.hashOf(node) & mask;
      while (this.table[place] !== 0) place = (place + 1) & mask;
      this.table[place] = node;
    }
  }

  private hashOf(node: NodeId): number {
    const start = this.starts[node] ?? 0;
    let mixed = Math.imul((this.levels[node] ?? 0) + 1, 0x9e3779b1);
    for (let at = start; at < start + (this.widths[node] ?? 0); at += 1) {
      mixed = Math.imul(mixed ^ (this.children[at] ?? 0), 0x85ebca6b);
      mixed ^= mixed >>> 13;
    }
    return mixed;
  }
}

function grown(array: Int32Array): Int32Array<ArrayBuffer> {
  const larger = new Int32Array(array.length * 2);
  larger.set(array);
  return larger;
}
