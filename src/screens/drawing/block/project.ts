/** Edges of a block as they are seen in a view, and those that metal hides. All of them lie along an axis. */

import type { Axis, Cut, Solid, Stretch } from './solid.ts';

export type ViewName = 'front' | 'top' | 'end';

/** Two axes on the paper, and the one that is looked along. */
export interface Sight {
  readonly across: Axis;
  readonly up: Axis;
  readonly deep: Axis;
  /** Looked at from the higher end of `deep`. */
  readonly fromHigh: boolean;
}

/** From the front, from above, and from the left. */
export const SIGHTS: Readonly<Record<ViewName, Sight>> = {
  front: { across: 'length', up: 'height', deep: 'width', fromHigh: false },
  top: { across: 'length', up: 'width', deep: 'height', fromHigh: true },
  end: { across: 'width', up: 'height', deep: 'length', fromHigh: false },
};

/** A straight edge in mm along the axes of a view: where it lies on one of them, and its stretch on the other. */
export interface Edge {
  readonly runs: 'across' | 'up';
  readonly at: number;
  readonly stretch: Stretch;
  readonly hidden: boolean;
  /** What made the surface that is seen edge on; nothing for bare stock. */
  readonly feature: string | null;
}

/** Metal, or by what it was taken away. */
type Cell = 'metal' | { readonly by: string | null };

/** What lies behind one place of the view, the nearest first. */
type Column = readonly Cell[];

/** Every edge once; where a seen and a hidden one fall together, the seen one. */
export function edgesOf(solid: Solid, sight: Sight): readonly Edge[] {
  const { across, up } = sight;
  const columns = columnsOf(solid, sight);
  const air = (axis: Axis, end: 0 | 1) => airBeside(solid, axis, end, sight);
  const [leftAir, rightAir, lowerAir, upperAir] = [
    air(across, 0),
    air(across, 1),
    air(up, 0),
    air(up, 1),
  ];
  const [acrossMarks, upMarks] = [marksOf(solid, across), marksOf(solid, up)];
  const upright = acrossMarks.flatMap((at, i) =>
    joined(
      stretchesOf(upMarks).flatMap((stretch, j) => {
        const [one, other] = [columns[i - 1]?.[j] ?? leftAir, columns[i]?.[j] ?? rightAir];
        return edge('up', at, stretch, one, other);
      }),
    ),
  );
  const level = upMarks.flatMap((at, j) =>
    joined(
      stretchesOf(acrossMarks).flatMap((stretch, i) => {
        const [one, other] = [columns[i]?.[j - 1] ?? lowerAir, columns[i]?.[j] ?? upperAir];
        return edge('across', at, stretch, one, other);
      }),
    ),
  );
  return [...upright, ...level];
}

/** Where anything begins or ends along an axis, rising. */
function marksOf({ finished, cuts }: Solid, axis: Axis): readonly number[] {
  const ends = [...finished[axis], ...cuts.flatMap(({ box }) => box[axis])];
  return [...new Set(ends)].sort((a, b) => a - b);
}

function stretchesOf(marks: readonly number[]): readonly Stretch[] {
  return marks.slice(1).map((mark, index) => [marks[index] ?? mark, mark]);
}

function columnsOf(solid: Solid, sight: Sight): readonly (readonly Column[])[] {
  const middles = (axis: Axis) => stretchesOf(marksOf(solid, axis)).map(([a, b]) => (a + b) / 2);
  const deep = middles(sight.deep);
  const inOrder = sight.fromHigh ? [...deep].reverse() : deep;
  return middles(sight.across).map((a) =>
    middles(sight.up).map((u) =>
      inOrder.map((d) => cellAt(solid.cuts, { [sight.across]: a, [sight.up]: u, [sight.deep]: d })),
    ),
  );
}

function cellAt(cuts: readonly Cut[], place: Partial<Record<Axis, number>>): Cell {
  const cut = cuts.find(({ box }) =>
    Object.entries(place).every(([axis, at]) => {
      const [low, high] = box[axis as Axis];
      return at > low && at < high;
    }),
  );
  return cut ? { by: cut.feature } : 'metal';
}

const SIDE_AT = {
  length: ['left', 'right'],
  width: ['front', 'back'],
  height: ['bottom', 'top'],
} as const;

/** Beside the finished block all is air: what made the side took it away. */
function airBeside(solid: Solid, axis: Axis, end: 0 | 1, sight: Sight): Column {
  const by = solid.sides[SIDE_AT[axis][end]] ?? null;
  return stretchesOf(marksOf(solid, sight.deep)).map(() => ({ by }));
}

/** The nearest place where metal is on one side only makes the edge; metal before it on both sides hides it. */
function edge(
  runs: Edge['runs'],
  at: number,
  stretch: Stretch,
  one: Column,
  other: Column,
): readonly Edge[] {
  const nearest = one.findIndex((cell, depth) => (cell === 'metal') !== (other[depth] === 'metal'));
  const [a, b] = [one[nearest], other[nearest]];
  if (a === undefined || b === undefined) return [];
  const air = a === 'metal' ? b : a;
  const hidden = one.slice(0, nearest).includes('metal');
  return [{ runs, at, stretch, hidden, feature: air === 'metal' ? null : air.by }];
}

/** Edges of one line, in order, made one where they go on alike. */
function joined(edges: readonly Edge[]): readonly Edge[] {
  const done: Edge[] = [];
  for (const next of edges) {
    const last = done.at(-1);
    const goesOn =
      last?.stretch[1] === next.stretch[0] &&
      last.hidden === next.hidden &&
      last.feature === next.feature;
    if (last && goesOn)
      done[done.length - 1] = { ...next, stretch: [last.stretch[0], next.stretch[1]] };
    else done.push(next);
  }
  return done;
}
