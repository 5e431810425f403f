/** The last answers for two or three numbers: each has one place, and new ones take it over. Never in the way of memory. */

export class Recent {
  private readonly mask: number;
  /** Four for each answer, the first number plus one: so an empty place need not be written before it is used. */
  private readonly kept: Int32Array;

  /** Room for 2^`bits` answers. */
  constructor(bits: number) {
    this.mask = (1 << bits) - 1;
    this.kept = new Int32Array(4 << bits);
  }

  /** The answer for some numbers; -1 where it is not known, or no longer. */
  get(a: number, b: number, c = 0): number {
    const { kept } = this;
    const place = this.placeOf(a, b, c);
    return kept[place] === a + 1 && kept[place + 1] === b && kept[place + 2] === c
      ? (kept[place + 3] ?? -1)
      : -1;
  }

  set(a: number, b: number, answer: number, c = 0): void {
    const { kept } = this;
    const place = this.placeOf(a, b, c);
    kept[place] = a + 1;
    kept[place + 1] = b;
    kept[place + 2] = c;
    kept[place + 3] = answer;
  }

  private placeOf(a: number, b: number, c: number): number {
    const mixed = Math.imul(a, 0x9e3779b1) ^ Math.imul(b, 0x85ebca6b) ^ Math.imul(c, 0xc2b2ae35);
    return ((mixed ^ (mixed >>> 15)) & this.mask) << 2;
  }
}
