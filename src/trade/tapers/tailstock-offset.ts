/** How far the tailstock is set over for a long slow taper. */

import { worded } from '../../texts/index.ts';
import { aLength } from '../inputs.ts';
import { part } from '../part.ts';
import type { Rule, RuleValues, Worked } from '../rule.ts';
import { show } from '../show.ts';
import { fault, numberOf } from '../values.ts';
import { largeInput, smallInput, taperFault } from './compound-angle.ts';
import { halfAngle } from './taper.ts';

/** Share of the work's length beyond which the centres bear badly. Common practice, no source. */
const LARGEST_SHARE = 1 / 50;

function work(values: RuleValues): Worked {
  const [large, small] = [numberOf(values, 'large'), numberOf(values, 'small')];
  const [taper, whole] = [numberOf(values, 'taperLength'), numberOf(values, 'workLength')];
  const wrong = taperFault(large, small);
  if (wrong !== undefined) return fault(wrong);
  if (taper > whole) {
    return fault(
      worded`The taper, ${show(taper)} mm, is longer than the work between centres, ${show(whole)} mm; check both.`,
    );
  }
  const ratio = (large - small) / taper;
  const offset = (whole * ratio) / 2;
  const most = whole * LARGEST_SHARE;
  const far =
    offset > most
      ? worded`; more than 1/50 of the length (${show(most, 4)}): use ball centres, the compound or an attachment`
      : '';
  return {
    ok: true,
    value: offset,
    working: worded`${show(whole)} × (${show(large)} − ${show(small)}) ÷ (2 × ${show(taper)}) = ${show(offset, 5)} mm${far}`,
    parts: { angle: part(halfAngle(ratio), 'angle', 'half angle of the taper') },
  };
}

export const tailstockOffset: Rule = {
  name: 'tailstock-offset',
  title: 'Tailstock set-over for a taper',
  topic: 'tapers',
  inputs: [
    largeInput,
    smallInput,
    aLength('taperLength', 4000, 'length of the taper'),
    aLength('workLength', 4000, 'whole length of the work between centres'),
  ],
  output: { quantity: 'length', meaning: 'set-over of the tailstock', parts: { angle: 'angle' } },
  formula: 'set-over = L (D − d) ÷ (2 l), L the whole length; centre holes left out',
  source: 'Rose, Modern Machine-Shop Practice; 1/50 of the length: common practice, no source',
  cautions: [
    'A set-over tailstock turns a taper on the next job too: set it back and check it with a test cut.',
    'Grease plain centres and stop to re-adjust them as the work warms.',
  ],
  work,
};
