/** The hole to leave for a reamer. */

import { worded } from '../../texts/index.ts';
import { aChoice, aLength } from '../inputs.ts';
import { lengthPart } from '../part.ts';
import type { Rule } from '../rule.ts';
import { show } from '../show.ts';
import { fault, numberOf, wordOf } from '../values.ts';

/** What to leave on the diameter, middle of the printed range. */
const ALLOWANCES: readonly { readonly upTo: number; readonly leave: number }[] = [
  { upTo: 5, leave: 0.15 },
  { upTo: 20, leave: 0.25 },
  { upTo: 50, leave: 0.4 },
  { upTo: Number.POSITIVE_INFINITY, leave: 0.75 },
];

/** A drill cuts about this much over its size. */
const OVERSIZE = 0.05;
/** A bored hole is true, so less is left. */
const BORED = 0.2;

/** mm to leave on the diameter for a reamer of this diameter. */
export function reamAllowance(diameter: number, hole: string): number {
  if (hole === 'bored') return BORED;
  return ALLOWANCES.find((row) => diameter <= row.upTo)?.leave ?? 0;
}

export const reamDrillRule: Rule = {
  name: 'ream-drill',
  title: 'Hole to leave for a reamer',
  topic: 'drilling',
  inputs: [
    aLength('diameter', 150, 'diameter of the reamer'),
    aChoice('hole', ['drilled', 'bored'], 'how the hole is made', { default: 'drilled' }),
  ],
  output: {
    quantity: 'length',
    meaning: 'drill to use, or size to bore to',
    parts: { allowance: 'length' },
  },
  formula:
    'drilled: D − allowance − 0.05; bored: D − 0.2; allowance 0.15 to 5 mm, 0.25 to 20, 0.4 to 50, 0.75 above',
  source:
    'Reaming: undersizes (tables of 0.1-0.2, 0.2-0.3, 0.3-0.5 and 0.5-1.0); US War Dept TM 1-420 for bored holes (0.13-0.25)',
  cautions: ['Take the next drill you have that is not larger.', 'Never turn a reamer backwards.'],
  work: (values) => {
    const diameter = numberOf(values, 'diameter');
    const hole = wordOf(values, 'hole');
    const allowance = reamAllowance(diameter, hole);
    const oversize = hole === 'drilled' ? OVERSIZE : 0;
    const value = diameter - allowance - oversize;
    if (value <= 0) {
      return fault(
        worded`A reamer of ${show(diameter)} mm leaves no hole to drill; drill to size.`,
      );
    }
    const more = oversize === 0 ? '' : worded` − ${oversize} the drill cuts over`;
    return {
      ok: true,
      value,
      working: worded`${show(diameter)} − ${show(allowance)}${more} = ${show(value, 5)} mm`,
      parts: { allowance: lengthPart(allowance, 'metal left on the diameter') },
    };
  },
};
