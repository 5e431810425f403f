/** Puts the labels of standing distances in rows over the views, like flags on poles. */

import { flagRows } from '../flags.ts';
import { type Frame, frameOf, MARGIN } from './frame.ts';
import type { Labelled, Plan } from './plan.ts';

export interface Flagged {
  readonly wanted: Labelled;
  readonly side: 'left' | 'right';
  /** Where the dimension line stands. */
  readonly pole: number;
  readonly left: number;
  readonly row: number;
  /** A strange line runs through the label: there was no order in which that could be helped. */
  readonly crossed: boolean;
}

export interface Placed {
  readonly plan: Plan;
  readonly frame: Frame;
  readonly flags: readonly Flagged[];
}

export function placedIn(plan: Plan): Placed {
  const frame = frameOf(plan);
  const { leftColumn, rightColumn, column } = frame;
  const poles = [
    ...plan.left.map((wanted, index) => ({
      ...{ wanted, side: 'left' as const, flies: 'right' as const },
      pole: leftColumn - index * column,
    })),
    ...plan.right.map((wanted, index) => ({
      ...{ wanted, side: 'right' as const, flies: 'left' as const },
      pole: rightColumn + index * column,
    })),
  ];
  const rows = flagRows(
    poles.map(({ wanted, flies, pole }) => ({
      ...{ flies, width: wanted.label.width },
      pole: pole - MARGIN,
    })),
    plan.width - 2 * MARGIN,
  );
  const flags = poles.map(({ wanted, side, pole }, index) => {
    const { left = 0, row = 0, crossed = true } = rows[index] ?? {};
    return { wanted, side, pole, left: left + MARGIN, row, crossed };
  });
  return { plan, frame, flags };
}
