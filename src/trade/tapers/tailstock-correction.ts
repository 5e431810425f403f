/** How far a tailstock that is out of line must be moved, from the taper that it turned. */

import { worded } from '../../texts/index.ts';
import { aLength } from '../inputs.ts';
import type { Rule, RuleValues, Worked } from '../rule.ts';
import { show } from '../show.ts';
import { fault, numberOf } from '../values.ts';

function work(values: RuleValues): Worked {
  const difference = numberOf(values, 'difference');
  const [measured, whole] = [numberOf(values, 'measuredLength'), numberOf(values, 'workLength')];
  if (measured > whole) {
    return fault(
      worded`The two places, ${show(measured)} mm apart, are farther apart than the work between centres is long, ${show(whole)} mm; check both.`,
    );
  }
  const move = (whole * difference) / (2 * measured);
  return {
    ok: true,
    value: move,
    working: worded`${show(whole)} × ${show(difference)} ÷ (2 × ${show(measured)}) = ${show(move, 4)} mm; towards the front when the tailstock end is larger, away from it when it is smaller`,
  };
}

export const tailstockCorrection: Rule = {
  name: 'tailstock-correction',
  title: 'Tailstock correction for a taper that was not wanted',
  topic: 'tapers',
  inputs: [
    aLength('difference', 50, 'how much the two diameters differ'),
    aLength('measuredLength', 4000, 'distance between the two places that were measured'),
    aLength('workLength', 4000, 'whole length of the work between centres'),
  ],
  output: { quantity: 'length', meaning: 'how far the tailstock moves' },
  formula: 'move = L (D − d) ÷ (2 l), L the whole length, l between the two places',
  source:
    'the set-over formula of Rose, Modern Machine-Shop Practice, turned round; which way to move: geometry, for a tool at the front',
  cautions: [
    'Only where a centre in the tailstock holds the end. Work held in the chuck alone bends, and no tailstock cures that.',
    'Move it, take a test cut, and measure both ends again.',
  ],
  work,
};
