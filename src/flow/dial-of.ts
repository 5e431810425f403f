/** The cross dial of a machine card. */

import type { Card } from './card.ts';

export interface CrossDial {
  readonly crossReads: 'diameter' | 'radius';
  /** One division, in mm as the dial counts. */
  readonly crossDivision: number;
}

/** A card without a cross dial is taken to read the radius in hundredths: the cautious reading. */
export function dialOf({ values }: Pick<Card, 'values'>): CrossDial {
  const { crossReads, crossDivision } = values;
  return {
    crossReads: crossReads === 'diameter' ? 'diameter' : 'radius',
    crossDivision: typeof crossDivision === 'number' ? crossDivision : 0.01,
  };
}

/** The least change of diameter that can be set, in mm: half a division, split by eye (common practice, no source). */
export function leastChange({ crossReads, crossDivision }: CrossDial): number {
  return crossReads === 'diameter' ? crossDivision / 2 : crossDivision;
}
