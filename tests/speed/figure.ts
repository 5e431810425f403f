/** One measured number of `npm run bench`. */
export interface Figure {
  readonly name: string;
  readonly value: number;
  readonly unit: string;
  /** What it should be at most, when somebody promised. */
  readonly target?: number;
}
