/** How long a milling cut takes, with the run-up of the cutter. */

import { worded } from '../../texts/index.ts';
import { aChoice, aCount, aLength, aNumber } from '../inputs.ts';
import { lengthPart } from '../part.ts';
import type { Rule, RuleValues, Worked } from '../rule.ts';
import { show } from '../show.ts';
import { fault, numberOf, wordOf } from '../values.ts';

type Kind = 'slab' | 'face' | 'face-offset';

/** mm the cutter travels before it is fully in. `across`: depth for slab, width for face milling. */
export function runUp(kind: Kind, cutter: number, across: number): number {
  if (kind === 'face') return (cutter - Math.sqrt(cutter * cutter - across * across)) / 2;
  return Math.sqrt(across * (cutter - across));
}

const kindOf = (word: string): Kind => (word === 'face' || word === 'face-offset' ? word : 'slab');

function work(values: RuleValues): Worked {
  const kind = kindOf(wordOf(values, 'kind'));
  const [cutter, across] = [numberOf(values, 'cutter'), numberOf(values, 'across')];
  const [length, feed] = [numberOf(values, 'length'), numberOf(values, 'feed')];
  const [overrun, passes] = [numberOf(values, 'overrun'), numberOf(values, 'passes')];
  if (across > cutter) {
    return fault(
      worded`${show(across)} mm is more than the ${show(cutter)} mm cutter takes; make more passes.`,
    );
  }
  const approach = runUp(kind, cutter, across);
  const travel = length + approach + overrun;
  const value = (passes * travel) / feed;
  return {
    ok: true,
    value,
    working: worded`run-up ${show(approach, 4)} mm; ${passes} × (${show(length)} + ${show(approach, 4)} + ${show(overrun)}) ÷ ${show(feed)} = ${show(value, 4)} min`,
    parts: {
      runUp: lengthPart(approach, 'run-up of the cutter'),
      travel: lengthPart(travel, 'table travel a pass'),
    },
  };
}

export const millingTime: Rule = {
  name: 'milling-time',
  title: 'Time of a milling cut',
  topic: 'milling',
  inputs: [
    aLength('length', 10_000, 'length of the cut'),
    aNumber('feed', 'feedRate', [0, 20_000], 'table feed', { aboveMin: true }),
    aLength('cutter', 1000, 'diameter of the cutter'),
    aLength('across', 1000, 'slab and side milling: depth into the work; face milling: width'),
    aChoice(
      'kind',
      ['slab', 'face', 'face-offset'],
      'slab or side, face centred, face off centre',
      {
        default: 'slab',
        said: {
          slab: ['side', 'slab milling', 'side milling'],
          face: ['facing', 'face milling'],
          'face-offset': ['off centre', 'over the edge'],
        },
      },
    ),
    aNumber('overrun', 'length', [0, 1000], 'travel beyond the work', { default: 0 }),
    aCount('passes', [1, 1000], 'passes', { default: 1 }),
  ],
  output: {
    quantity: 'time',
    meaning: 'time in the cut',
    parts: { runUp: 'length', travel: 'length' },
  },
  formula:
    't = (L + A + overrun) ÷ vf; slab A = √(d (D − d)); face A = (D − √(D² − w²)) ÷ 2, off centre √(w (D − w))',
  source:
    'Groover, Fundamentals of Modern Manufacturing 4e. Kalpakjian & Schmid (from memory) take D ÷ 2 at both ends when facing: give that as overrun',
  cautions: ['Stop the spindle before the table is sent back over finished work.'],
  work,
};
