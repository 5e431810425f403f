/** The hole and the seat for a socket-head cap screw. */

import { worded } from '../../texts/index.ts';
import { aChoice } from '../inputs.ts';
import { lengthPart } from '../part.ts';
import type { Rule } from '../rule.ts';
import { wordOf } from '../values.ts';

interface Seat {
  /** Clearance holes of the fine, middle and coarse row of ISO 273, mm. */
  readonly holes: readonly [number, number, number];
  /** Diameter of the counterbore, mm. */
  readonly bore: number;
  /** Height of the head, mm. */
  readonly head: number;
}

function seat(holes: Seat['holes'], bore: number, head: number): Seat {
  return { holes, bore, head };
}

const PRINTED = 'Counterbored hole chart for DIN screws, printed (M3 to M10)';
const MEMORY = 'from memory: ISO 273 and DIN 974-1 row 1 (M12 and above)';

const SEATS = {
  M3: seat([3.2, 3.4, 3.6], 6.5, 3),
  M4: seat([4.3, 4.5, 4.8], 8, 4),
  M5: seat([5.3, 5.5, 5.8], 10, 5),
  M6: seat([6.4, 6.6, 7], 11, 6),
  M8: seat([8.4, 9, 10], 15, 8),
  M10: seat([10.5, 11, 12], 18, 10),
  M12: seat([13, 13.5, 14.5], 20, 12),
  M16: seat([17, 17.5, 18.5], 26, 16),
  M20: seat([21, 22, 24], 33, 20),
  M24: seat([25, 26, 28], 40, 24),
} as const;

type Screw = keyof typeof SEATS;

const screws = Object.keys(SEATS) as readonly Screw[];
const fits = ['close', 'normal', 'loose'] as const;
/** The head lies this far below the face, mm. */
const BELOW = 0.5;

export const counterboreRule: Rule = {
  name: 'counterbore',
  title: 'Hole and counterbore for a cap screw',
  topic: 'drilling',
  inputs: [
    aChoice('screw', screws, 'socket-head cap screw', { said: {} }),
    aChoice('fit', fits, 'how the screw goes through', { default: 'normal' }),
  ],
  output: {
    quantity: 'length',
    meaning: 'diameter of the counterbore',
    parts: { hole: 'length', depth: 'length' },
  },
  formula: 'table; depth = height of the head + 0.5 mm',
  source: `${PRINTED}; ${MEMORY}; depth: printed counterbore table, head 0.5 mm below the face`,
  cautions: [
    'Half of the drilling speed, steady feed, and the pilot fitting the hole.',
    'Clamp the work: a counterbore that grabs turns it.',
  ],
  work: (values) => {
    const screw = screws.find((one) => one === wordOf(values, 'screw')) ?? 'M6';
    const fit = fits.find((one) => one === wordOf(values, 'fit')) ?? 'normal';
    const { holes, bore, head } = SEATS[screw];
    const hole = holes[fits.indexOf(fit)] ?? holes[1];
    const depth = head + BELOW;
    return {
      ok: true,
      value: bore,
      working: worded`${screw}, ${fit}: hole ${hole} mm, counterbore ${bore} mm, ${head} + ${BELOW} = ${depth} mm deep`,
      parts: {
        hole: lengthPart(hole, 'clearance hole'),
        depth: lengthPart(depth, 'depth of the counterbore'),
      },
    };
  },
};
