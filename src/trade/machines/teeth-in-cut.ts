/** Whether the blade that is on the saw suits the stock: three teeth at least in the cut. */

import { worded } from '../../texts/index.ts';
import { aLength, aNumber } from '../inputs.ts';
import type { Rule, RuleValues, Worked } from '../rule.ts';
import { show } from '../show.ts';
import { fault, numberOf } from '../values.ts';
import { pitchSpan } from './saw-pitch.ts';

const INCH = 25.4;

function work(values: RuleValues): Worked {
  const [thickness, teeth] = [numberOf(values, 'thickness'), numberOf(values, 'teeth')];
  const [least, most] = pitchSpan(thickness);
  const inCut = (thickness * teeth) / INCH;
  if (teeth < least * (1 - 1e-9)) {
    return fault(
      worded`${show(thickness)} mm with ${show(teeth)} teeth an inch puts only ${show(inCut, 3)} teeth in the cut, and fewer than three strip: it needs at least ${show(least, 3)} an inch. A trained person fits another blade.`,
    );
  }
  const packed =
    teeth > most
      ? worded`; more than 24 pack the gullets: let the head down slowly, and stop to clear them`
      : '';
  return {
    ok: true,
    value: inCut,
    working: worded`${show(thickness)} × ${show(teeth)} ÷ 25.4 = ${show(inCut, 3)} teeth in the cut${packed}`,
  };
}

export const teethInCut: Rule = {
  name: 'teeth-in-cut',
  title: 'Teeth of the saw blade in the cut',
  topic: 'other machines',
  inputs: [
    aLength('thickness', 1000, 'thickness the teeth pass through; of a tube the wall'),
    aNumber('teeth', 'pitchCount', [1, 40], 'teeth an inch of the blade; of mixed teeth the fewer'),
  ],
  output: { quantity: 'ratio', meaning: 'teeth in the cut' },
  formula: 'thickness in inches × teeth an inch; three at least, about 24 at most',
  source:
    'Agricultural Mechanics and Technology Systems (2017) p. 202: three teeth in the cut; US Navy training text 14119 takes two; upper end: common practice, no source',
  cautions: ['Only a trained person changes the blade, with the saw locked off.'],
  work,
};
