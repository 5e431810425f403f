/** Puts the labels over the piece in rows, like flags on poles, so that none lies on another or on a pole. */

export interface FlagWanted {
  /** Where its pole stands. */
  readonly pole: number;
  readonly width: number;
  /** Which way the flag rather flies from its pole; it turns when that makes room. */
  readonly flies: 'left' | 'right';
}

export interface Flag {
  readonly left: number;
  /** 0 is nearest the piece. */
  readonly row: number;
  /** A strange pole runs through it: there was no order in which that could be helped. */
  readonly crossed: boolean;
}

interface Reach {
  readonly pole: number;
  readonly left: number;
  readonly right: number;
}

interface Waiting {
  readonly index: number;
  /** Where it may lie, the better place first. */
  readonly choices: readonly Reach[];
}

/** Room kept between flags, and between a flag and a strange pole. */
const APART = 8;

/**
 * Rows for all flags, in the order given. A flag over another's pole must fly higher, so flags that are over
 * no waiting pole are placed first; when every one is (two long flags facing each other), the first goes.
 */
export function flagRows(wanted: readonly FlagWanted[], width: number): readonly Flag[] {
  const waiting = wanted.map((flag, index) => ({ index, choices: choices(flag, width) }));
  const placed = new Map<number, Reach & Flag>();
  while (waiting.length > 0) {
    const { at, reach, crossed } = nextOf(waiting);
    const [next] = waiting.splice(at, 1);
    if (!next || !reach) break;
    placed.set(next.index, { ...reach, crossed, row: lowestRow(reach, [...placed.values()]) });
  }
  return wanted.map((_, index) => placed.get(index) ?? { left: 0, row: 0, crossed: true });
}

interface Next {
  readonly at: number;
  readonly reach: Reach | undefined;
  readonly crossed: boolean;
}

/** The flag that can be placed now, and where. */
function nextOf(waiting: readonly Waiting[]): Next {
  for (const choice of ACROSS.keys())
    for (const [at, { choices: may }] of waiting.entries()) {
      const reach = may[choice];
      const covered = waiting.some(
        ({ choices: [other] }, place) => place !== at && reach && over(reach, other),
      );
      if (reach && !covered) return { at, reach, crossed: false };
    }
  return { at: 0, reach: waiting[0]?.choices[0], crossed: true };
}

function over(reach: Reach, other: Reach | undefined): boolean {
  return other !== undefined && covers(reach, other.pole);
}

/** How much of a flag lies on the far side of its pole, in the order of liking. */
const ACROSS = [0, 1, 0.5, 0.25, 0.75];

/** Where the flag may lie, pushed back into the picture where it would fly out of it. */
function choices({ pole, width, flies }: FlagWanted, picture: number): readonly Reach[] {
  return ACROSS.map((across) => {
    const wish = pole - width * (flies === 'left' ? 1 - across : across);
    const left = Math.max(Math.min(wish, picture - width), 0);
    return { pole, left, right: left + width };
  });
}

function covers({ left, right }: Reach, pole: number): boolean {
  return pole > left - APART && pole < right + APART;
}

function lowestRow(flag: Reach, placed: readonly (Reach & Flag)[]): number {
  let row = 0;
  while (placed.some((other) => clash(flag, row, other))) row++;
  return row;
}

function clash(flag: Reach, row: number, other: Reach & Flag): boolean {
  const meets = flag.left < other.right + APART && other.left < flag.right + APART;
  if (meets && other.row === row) return true;
  return covers(flag, other.pole) && other.row >= row;
}

/** Between a label and the shelf of the row above it. */
const ROW_GAP = 4;

/** Where the labels of each row stand, the row nearest the piece first; a row is as high as its highest label. */
export function rowFeet(
  flags: readonly { readonly row: number; readonly height: number }[],
  margin: number,
): readonly number[] {
  const heights: number[] = [];
  for (const { row, height } of flags) heights[row] = Math.max(heights[row] ?? 0, height + ROW_GAP);
  return heights.map((_, row) => margin + heights.slice(row).reduce((sum, one) => sum + one, 0));
}
