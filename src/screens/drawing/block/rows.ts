/** The rows of distances over or under a view: which labels stand between their heads, and how much room the others take. */

import type { Label } from '../marks.ts';
import type { Labelled } from './plan.ts';
import { type LabelAt, roomOutside, standsBetween } from './spans.ts';
import type { Wanted } from './wanted.ts';

/** Where the ends of a distance lie, in picture units from the left of its view. */
export type EndsOf = (wanted: Wanted) => readonly [number, number];

/** To which side of the view a label goes that does not stand between its heads. */
export type Outside = (label: Label, ends: readonly [number, number]) => 'left' | 'right';

export interface Row {
  readonly wanted: Labelled;
  readonly labelAt: LabelAt;
  /** Room that it takes beyond the view at `labelAt`; 0 between. */
  readonly room: number;
}

/** Rows from the view outwards; the extension lines of those further out pass through those nearer. */
export function rowsOf(
  all: readonly Labelled[],
  endsOf: EndsOf,
  outside: Outside,
  textSize: number,
): readonly Row[] {
  return all.map((wanted, index) => {
    const ends = endsOf(wanted);
    const strangers = all.slice(index + 1).flatMap((other) => endsOf(other));
    if (standsBetween(wanted.label, ends, strangers, textSize))
      return { wanted, labelAt: 'between', room: 0 };
    const span = ends[1] - ends[0];
    return {
      wanted,
      labelAt: outside(wanted.label, ends),
      room: roomOutside(wanted.label, span, textSize),
    };
  });
}

/** The most that labels take beyond one side of a view. */
export function roomAt(rows: readonly Row[], side: 'left' | 'right'): number {
  return Math.max(0, ...rows.filter(({ labelAt }) => labelAt === side).map(({ room }) => room));
}
