/** The last answers for pairs of numbers: each pair has one place, and a new pair takes it over. Never in the way of memory. */

export class Recent {
  private readonly mask: number;
  private readonly pairs: Int32Array;

  /** Room for 2^`bits` answers. */
  constructor(bits: number) {
    this.mask = (1 << bits) - 1;
    this.pairs = new Int32Array(3 << bits).fill(-1);
  }

  /** The answer for a pair; -1 where it is not known, or no longer. */
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
    return ((mixed ^ (mixed >>> 15)) & this.mask) * 3;
  }
}
