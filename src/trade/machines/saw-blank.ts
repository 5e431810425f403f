/** How long a blank is sawn, and how many come out of a bar. */

import { worded } from '../../texts/index.ts';
import { aLength, aNumber } from '../inputs.ts';
import { lengthPart, part } from '../part.ts';
import type { Rule, RuleValues, Worked } from '../rule.ts';
import { show } from '../show.ts';
import { PRACTICE } from '../sources.ts';
import { fault, numberOf } from '../values.ts';

function work(values: RuleValues): Worked {
  const [length, allowance] = [numberOf(values, 'length'), numberOf(values, 'allowance')];
  const [kerf, grip] = [numberOf(values, 'kerf'), numberOf(values, 'grip')];
  const value = length + 2 * allowance;
  const sum = worded`${show(length, 7)} + 2 × ${show(allowance)} = ${show(value, 7)} mm`;
  const bar = numberOf(values, 'bar');
  // A cut stands behind each piece, and what the vice must hold is left at the end.
  const pieces = Math.floor((bar - grip) / (value + kerf) + 1e-9);
  if (pieces < 1) {
    return fault(
      worded`A bar of ${show(bar, 7)} mm has no piece of ${show(value, 7)} mm in it: ${show(kerf)} mm go into the cut, and the vice holds the last ${show(grip, 7)} mm. Take a longer bar.`,
    );
  }
  const left = bar - pieces * (value + kerf);
  return {
    ok: true,
    value,
    working: worded`${sum}; (${show(bar, 7)} − ${show(grip, 7)}) ÷ (${show(value, 7)} + ${show(kerf)}) = ${pieces} pieces, ${show(left)} mm left`,
    parts: {
      pieces: part(pieces, 'count', 'pieces out of the bar'),
      left: lengthPart(left, 'left of the bar'),
    },
  };
}

export const sawBlank: Rule = {
  name: 'saw-blank',
  title: 'Length of a sawn blank',
  topic: 'other machines',
  inputs: [
    aLength('length', 10_000, 'finished length'),
    aNumber('allowance', 'length', [0, 50], 'left to face at each end', { default: 0 }),
    aNumber('kerf', 'length', [0, 20], 'width of the cut: the blade with its set', {
      default: 1.5,
    }),
    aLength('bar', 20_000, 'length of the bar'),
    aNumber('grip', 'length', [0, 1000], 'length that the vice must hold at the last cut', {
      default: 80,
    }),
  ],
  output: {
    quantity: 'length',
    meaning: 'length to saw',
    parts: { pieces: 'count', left: 'length' },
  },
  formula: 'blank = finished + 2 × allowance; pieces = (bar − grip) ÷ (blank + kerf), rounded down',
  source: `geometry; kerf and grip where none are given: ${PRACTICE}`,
  cautions: ['A short end is not clamped by its end alone: pack the other end of the jaws.'],
  work,
};
