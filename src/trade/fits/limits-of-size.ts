/** The limits of a size with its tolerance class: 25 H7, 40 k6. */

import { worded } from '../../texts/index.ts';
import { aLength, aText } from '../inputs.ts';
import { lengthPart } from '../part.ts';
import type { Rule, RuleValues, Worked } from '../rule.ts';
import { show } from '../show.ts';
import { fault, numberOf, wordOf } from '../values.ts';
import { deviationByFormula } from './deviation-formula.ts';
import { classDeviations } from './deviations.ts';
import { largestSize } from './steps.ts';

/** "+21" or "-7" or "0", in µm. */
export const signed = (micrometres: number) => `${micrometres > 0 ? '+' : ''}${show(micrometres)}`;

function work(values: RuleValues): Worked {
  const [size, wanted] = [numberOf(values, 'size'), wordOf(values, 'class').trim()];
  const found = classDeviations(size, wanted);
  if ('fault' in found) return fault(found.fault);
  const byFormula = deviationByFormula(wanted.replace(/\d+$/, '').toLowerCase(), size);
  const beside =
    byFormula === undefined
      ? ''
      : worded` (table; the formula of its letter gives ${show(byFormula, 3)})`;
  const [upper, lower] = [size + found.upper / 1000, size + found.lower / 1000];
  return {
    ok: true,
    value: upper,
    working: worded`${show(size, 7)} ${wanted}: deviations ${signed(found.upper)} and ${signed(found.lower)} µm${beside}; limits ${show(lower, 8)} to ${show(upper, 8)} mm`,
    parts: {
      lower: lengthPart(lower, 'lower limit'),
      upper: lengthPart(upper, 'upper limit'),
      middle: lengthPart((upper + lower) / 2, 'middle of the limits, the size to aim for'),
      tolerance: lengthPart((found.upper - found.lower) / 1000, 'width of the tolerance'),
      upperDeviation: lengthPart(found.upper / 1000, 'upper deviation from the nominal size'),
      lowerDeviation: lengthPart(found.lower / 1000, 'lower deviation from the nominal size'),
    },
  };
}

export const limitsOfSize: Rule = {
  name: 'limits-of-size',
  title: 'Limits of a size with a tolerance class',
  topic: 'fits',
  inputs: [
    aLength('size', largestSize, 'nominal size'),
    aText('class', 'H7', 'tolerance class; capitals are holes, small letters shafts'),
  ],
  output: {
    quantity: 'length',
    meaning: 'upper limit of size',
    parts: {
      lower: 'length',
      upper: 'length',
      middle: 'length',
      tolerance: 'length',
      upperDeviation: 'length',
      lowerDeviation: 'length',
    },
  },
  formula:
    'Shafts a to h: es = −table, ei = es − IT; j to zc: ei = table, es = ei + IT; js: ± IT/2 (an odd IT7 to IT11 may first be made even; not done here). Holes A to H: EI = +table; K, M, N to grade 8 and P to ZC to grade 7: ES = −ei + Δ, Δ = IT(n) − IT(n−1)',
  source:
    'ISO 286-1 and ISO 286-2 tables, as in Narayana et al., Machine Drawing and JIS B 0401; parts from memory: ISO 286-1',
  cautions: ['Measure with the spindle stopped and the work at 20 °C or corrected to it.'],
  work,
};
