/** The two gaps of a bench or pedestal grinder. */

import { sequence, type Worded, worded } from '../../texts/index.ts';
import { aNumber } from '../inputs.ts';
import { lengthPart } from '../part.ts';
import type { Rule, RuleValues, Worked } from '../rule.ts';
import { show } from '../show.ts';
import { fault, numberOf } from '../values.ts';

const INCH = 25.4;
/** Source: 29 CFR 1910.215(a)(4): work rest; (b)(9): tongue guard. */
export const MOST_REST = INCH / 8;
export const MOST_TONGUE = INCH / 4;

const NEAR = 1e-9;

function tooWide(values: RuleValues): readonly Worded[] {
  const [rest, tongue] = [numberOf(values, 'rest'), numberOf(values, 'tongue')];
  return [
    ...(rest > MOST_REST + NEAR
      ? [worded`the work rest stands ${show(rest)} mm off, at most ${show(MOST_REST)} (1/8 in)`]
      : []),
    ...(tongue > MOST_TONGUE + NEAR
      ? [
          worded`the tongue guard stands ${show(tongue)} mm off, at most ${show(MOST_TONGUE)} (1/4 in)`,
        ]
      : []),
  ];
}

function work(values: RuleValues): Worked {
  const wide = tooWide(values);
  if (wide.length > 0) {
    return fault(
      worded`Do not grind: ${sequence(wide, '; ')}. Stop and isolate the grinder, let the wheel stand, close the gap, clamp it, turn the wheel by hand.`,
    );
  }
  const [rest, tongue] = [numberOf(values, 'rest'), numberOf(values, 'tongue')];
  return {
    ok: true,
    value: MOST_REST - rest,
    word: 'within',
    working: worded`work rest ${show(rest)} ≤ ${show(MOST_REST)} mm, tongue guard ${show(tongue)} ≤ ${show(MOST_TONGUE)} mm`,
    parts: {
      mostRest: lengthPart(MOST_REST, 'widest gap of the work rest'),
      mostTongue: lengthPart(MOST_TONGUE, 'widest gap of the tongue guard'),
    },
  };
}

export const grinderGaps: Rule = {
  name: 'grinder-gaps',
  title: 'Gaps of a grinder',
  topic: 'other machines',
  inputs: [
    aNumber('rest', 'length', [0, 100], 'gap from wheel to work rest'),
    aNumber('tongue', 'length', [0, 100], 'gap from wheel to tongue guard'),
  ],
  output: {
    quantity: 'length',
    meaning: 'how much wider the work rest gap may still get',
    parts: { mostRest: 'length', mostTongue: 'length' },
  },
  formula: 'work rest at most 1/8 in (3.175 mm), tongue guard at most 1/4 in (6.35 mm)',
  source:
    '29 CFR 1910.215(a)(4); from memory: 29 CFR 1910.215(b)(9); MSHA 30 CFR 56.14115(b). Local rules may be narrower',
  cautions: ['Gaps are set only with the wheel standing still and the grinder isolated.'],
  work,
};
