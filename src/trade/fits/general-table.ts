/** General tolerances of ISO 2768-1 in mm and degrees; NaN where the standard gives none. */

export type GeneralClass = 'f' | 'm' | 'c' | 'v';
export const generalClasses: readonly GeneralClass[] = ['f', 'm', 'c', 'v'];

interface Steps {
  readonly over: number;
  readonly upTo: readonly number[];
  readonly plusMinus: Readonly<Record<GeneralClass, readonly number[]>>;
}

const none = Number.NaN;

/**
 * Source: ISO 2768-1:1989 table 1, two printed copies. One copy prints c as 0.15 and 0.2 in
 * the first two steps; the others have 0.2 and 0.3, taken here.
 */
export const linear: Steps = {
  over: 0.5,
  upTo: [3, 6, 30, 120, 400, 1000, 2000, 4000],
  plusMinus: {
    f: [0.05, 0.05, 0.1, 0.15, 0.2, 0.3, 0.5, none],
    m: [0.1, 0.1, 0.2, 0.3, 0.5, 0.8, 1.2, 2],
    c: [0.2, 0.3, 0.5, 0.8, 1.2, 2, 3, 4],
    v: [none, 0.5, 1, 1.5, 2.5, 4, 6, 8],
  },
};

/** External radii and chamfer heights. Source: ISO 2768-1:1989 table 2. */
export const corner: Steps = {
  over: 0.5,
  upTo: [3, 6, 4000],
  plusMinus: { f: [0.2, 0.5, 1], m: [0.2, 0.5, 1], c: [0.4, 1, 2], v: [0.4, 1, 2] },
};

/** Degrees, by the shorter leg. Source: from memory: ISO 2768-1:1989 table 3. */
export const angular: Steps = {
  over: 0,
  upTo: [10, 50, 120, 400, 4000],
  plusMinus: {
    f: [1, 1 / 2, 1 / 3, 1 / 6, 1 / 12],
    m: [1, 1 / 2, 1 / 3, 1 / 6, 1 / 12],
    c: [1.5, 1, 1 / 2, 1 / 4, 1 / 6],
    v: [3, 2, 1, 1 / 2, 1 / 3],
  },
};

/** The ± tolerance, or NaN where the standard gives none. A size on a bound belongs to the lower step. */
export function plusMinusOf(steps: Steps, size: number, wanted: GeneralClass): number {
  if (size < steps.over) return none;
  return steps.plusMinus[wanted][steps.upTo.findIndex((bound) => size <= bound)] ?? none;
}
