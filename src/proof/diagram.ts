/**
 * Nodes of a decision diagram in one flat array: a node has a level and children, equal nodes are one node, and each knows
 * which small numbers its rows hold at the upper levels. Objects would cost five times the room and the time.
 *
 * All of a node stands together, so that a look at it is one look at memory: its level and width, then what its rows hold
 * at the upper levels, then its children.
 */

import { worded } from '../texts/index.ts';
import { TooLarge } from './walk-limits.ts';

/** A node by its place; 0 holds no rows, 1 the one row that is 0 from there on. */
export type NodeId = number;

export const noNode: NodeId = 0;
export const zeroNode: NodeId = 1;

const widthBits = 13;
const widthMask = (1 << widthBits) - 1;
/** Below every level. */
export const bottom = (1 << 18) - 1;
/** Numbers of all nodes together, at most. */
const mostCells = 1 << 26;
const perWord = 4;

export class Diagram {
  private cells = new Int32Array(1 << 18);
  private used = 2;
  private nodes = 2;
  private table = new Int32Array(1 << 16);
  private readonly words: number;
  /** By level: the bits of value 0 for all levels above it. */
  private readonly zeros: Int32Array;
  /** Children of nodes that are being made; makers put theirs on top, and take them off again. */
  private stack = new Int32Array(1 << 12);
  private top = 0;

  /** `small`: so many upper levels hold numbers below 8, and their values are kept with every node. */
  constructor(private readonly small: number) {
    this.words = Math.ceil(small / perWord);
    this.zeros = new Int32Array((small + 1) * this.words);
    for (let level = 1; level <= small; level += 1) {
      for (let above = 0; above < level; above += 1) {
        const word = level * this.words + (above >> 2);
        this.zeros[word] = (this.zeros[word] ?? 0) | (1 << ((above & 3) * 8));
      }
    }
    this.cells[noNode] = bottom << widthBits;
    this.cells[zeroNode] = bottom << widthBits;
  }

  /** Nodes made so far. */
  get size(): number {
    return this.nodes;
  }

  level(node: NodeId): number {
    return (this.cells[node] ?? 0) >>> widthBits;
  }

  /** How many children stand at a level of its own; one elsewhere. */
  width(node: NodeId, level: number): number {
    const head = this.cells[node] ?? 0;
    return head >>> widthBits === level ? head & widthMask : 1;
  }

  /** The rows that hold `value` at `level`, seen from there on; a node of a lower level holds 0. */
  child(node: NodeId, level: number, value: number): NodeId {
    const head = this.cells[node] ?? 0;
    if (head >>> widthBits !== level) return value === 0 ? node : noNode;
    if (value >= (head & widthMask)) return noNode;
    return this.cells[node + 1 + this.words + value] ?? noNode;
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
    const above = Math.min(this.level(node), this.small) * this.words + word;
    const held = node === zeroNode ? 0 : (this.cells[node + 1 + word] ?? 0);
    return held | (this.zeros[above] ?? 0);
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
    if (this.nodes * 2 > this.table.length) this.rehash();
    return made;
  }

  private isSame(node: NodeId, level: number, from: number, width: number): boolean {
    const { cells, stack } = this;
    if (cells[node] !== ((level << widthBits) | width)) return false;
    const start = node + 1 + this.words;
    for (let at = 0; at < width; at += 1) if (cells[start + at] !== stack[from + at]) return false;
    return true;
  }

  private make(level: number, from: number, width: number): NodeId {
    if (level >= bottom || width > widthMask)
      throw new TooLarge(worded`A set is too wide or too deep.`);
    const made = this.used;
    const start = made + 1 + this.words;
    if (start + width > mostCells)
      throw new TooLarge(worded`Sets of more than ${mostCells} numbers.`);
    while (start + width > this.cells.length) this.cells = grown(this.cells);
    this.cells[made] = (level << widthBits) | width;
    for (let at = 0; at < width; at += 1) this.cells[start + at] = this.stack[from + at] ?? noNode;
    this.used = start + width;
    this.nodes += 1;
    this.keepValues(made, level, width);
    return made;
  }

  /** What its children hold, its own values, and 0 for the levels that a child leaves out. */
  private keepValues(made: NodeId, level: number, width: number): void {
    const { cells, words, small } = this;
    const below = Math.min(level + 1, small) * words;
    for (let value = 0; value < width; value += 1) {
      const child = cells[made + 1 + words + value] ?? noNode;
      if (child === noNode) continue;
      for (let word = 0; word < words; word += 1) {
        const kept = this.word(child, word) & ~(this.zeros[below + word] ?? 0);
        cells[made + 1 + word] = (cells[made + 1 + word] ?? 0) | kept;
      }
      if (level < small) {
        const at = made + 1 + (level >> 2);
        cells[at] = (cells[at] ?? 0) | (1 << ((level & 3) * 8 + value));
      }
    }
  }

  private rehash(): void {
    this.table = new Int32Array(this.table.length * 2);
    const mask = this.table.length - 1;
    for (let node = 2; node < this.used; ) {
      const width = (this.cells[node] ?? 0) & widthMask;
      let place = this.hashOf(node, width) & mask;
      while (this.table[place] !== 0) place = (place + 1) & mask;
      this.table[place] = node;
      node += 1 + this.words + width;
    }
  }

  private hashOf(node: NodeId, width: number): number {
    const start = node + 1 + this.words;
    let mixed = Math.imul(this.level(node) + 1, 0x9e3779b1);
    for (let at = start; at < start + width; at += 1) {
      mixed = Math.imul(mixed ^ (this.cells[at] ?? 0), 0x85ebca6b);
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
