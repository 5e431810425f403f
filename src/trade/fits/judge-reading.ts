/** A reading against limits: within, can be reworked, or lost. */

import { type Worded, worded } from '../../texts/index.ts';
import { aChoice, aNumber } from '../inputs.ts';
import { lengthPart } from '../part.ts';
import type { Rule, RuleValues, Worked } from '../rule.ts';
import { show } from '../show.ts';
import { fault, numberOf, wordOf } from '../values.ts';
import { guardFault } from './guard-band.ts';

interface Judged {
  readonly word: 'within' | 'rework' | 'lost';
  /** mm of size to come off (rework) or that are missing (lost); 0 when within. */
  readonly amount: number;
}

/** mm; far below any gauge, only there so that 24.98 + 0.002 counts as 24.982. */
const SAME_WITHIN = 1e-9;

const beyond = (amount: number) => (amount > SAME_WITHIN ? amount : 0);

/**
 * Judges a reading. An outside feature that is too large, or an inside one that is too small, still
 * has metal to come off; the other way round it is lost. All in mm.
 */
export function judge(
  reading: number,
  lower: number,
  upper: number,
  side: 'outside' | 'inside',
): Judged {
  const over = beyond(reading - upper);
  const under = beyond(lower - reading);
  if (over === 0 && under === 0) return { word: 'within', amount: 0 };
  const metalLeft = side === 'outside' ? over > 0 : under > 0;
  return { word: metalLeft ? 'rework' : 'lost', amount: Math.max(over, under) };
}

function sentence({ word, amount }: Judged, side: string): Worded {
  if (word === 'within') return 'within';
  const size = show(amount);
  if (word === 'lost')
    return worded`lost by ${size} mm: metal cannot be put back; measure again first`;
  return side === 'outside'
    ? worded`take ${size} mm off the size`
    : worded`open the size by ${size} mm`;
}

function work(values: RuleValues): Worked {
  const [reading, lower] = [numberOf(values, 'reading'), numberOf(values, 'lower')];
  const [upper, guard] = [numberOf(values, 'upper'), numberOf(values, 'uncertainty')];
  const side = wordOf(values, 'side') === 'inside' ? 'inside' : 'outside';
  const wrong = guardFault(lower, upper, guard);
  if (wrong !== undefined) return fault(wrong);
  const judged = judge(reading, lower + guard, upper - guard, side);
  const inGuard = judged.word !== 'within' && reading >= lower && reading <= upper;
  const band = guard > 0 ? worded` drawn in by ${show(guard)} mm` : '';
  const note = inGuard
    ? ' (inside the drawing limits, but not surely: a finer gauge may pass it)'
    : '';
  return {
    ok: true,
    value: judged.amount,
    word: judged.word,
    working: worded`${show(reading, 8)} mm against ${show(lower, 8)} to ${show(upper, 8)} mm${band}, ${side}: ${sentence(judged, side)}${note}`,
    ...(inGuard ? { ruledBy: 'the gauge uncertainty' } : {}),
    parts: {
      toMiddle: lengthPart(
        side === 'outside' ? reading - (lower + upper) / 2 : (lower + upper) / 2 - reading,
        'change of size to the middle of the limits; negative when it is already past',
      ),
    },
  };
}

export const judgeReading: Rule = {
  name: 'judge-reading',
  title: 'A reading against its limits',
  topic: 'fits',
  inputs: [
    aNumber('reading', 'length', [0, 4000], 'what the gauge shows'),
    aNumber('lower', 'length', [0, 4000], 'lower limit of size'),
    aNumber('upper', 'length', [0, 4000], 'upper limit of size'),
    aChoice('side', ['outside', 'inside'], 'outside (shaft, length) or inside (bore, slot)', {
      default: 'outside',
      said: {
        outside: ['shaft', 'external', 'length'],
        inside: ['bore', 'hole', 'slot', 'internal'],
      },
    }),
    aNumber('uncertainty', 'length', [0, 10], 'gauge uncertainty to keep off both limits', {
      default: 0,
    }),
  ],
  output: {
    quantity: 'length',
    meaning: 'size to come off (rework) or missing (lost); 0 when within',
    parts: { toMiddle: 'length' },
  },
  formula:
    'within when lower + U ≤ reading ≤ upper − U; outside: over = rework, under = lost; inside: the other way round',
  source: 'ISO 286-1, limits of size; guard band from memory: ISO 14253-1',
  cautions: ['Measure with the spindle stopped; let hot work cool before the last reading.'],
  work,
};
