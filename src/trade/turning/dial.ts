/** The cross-slide's dial: what it reads and what to set. */

import { worded } from '../../texts/index.ts';
import { aChoice, aLength, aNumber } from '../inputs.ts';
import { lengthPart, part } from '../part.ts';
import { stepsHalfEven } from '../rounding.ts';
import type { Rule, RuleValues } from '../rule.ts';
import { show } from '../show.ts';
import { numberOf, wordOf } from '../values.ts';

export const DIAL_SOURCE =
  'US Army TC 9-524, micrometer collar (both kinds of dial); Graduated dials; a class question on a diameter collar';

export const dialReadsInput = aChoice(
  'dialReads',
  ['diameter', 'radius'],
  'whether the dial shows the change of diameter or the travel of the tool',
);

export const graduationInput = aLength('graduation', 1, 'one division of the dial', {
  default: 0.02,
});

/** Dial movement for each mm of tool travel: 2 on a dial that reads diameter. */
export function dialPerTravel(values: RuleValues): 1 | 2 {
  return wordOf(values, 'dialReads') === 'diameter' ? 2 : 1;
}

export const dialSettingRule: Rule = {
  name: 'dial-setting',
  title: 'Dial movement for a change of diameter',
  topic: 'passes and dials',
  inputs: [
    aNumber('change', 'length', [0, 1000], 'change of diameter, in or out'),
    dialReadsInput,
    graduationInput,
  ],
  output: {
    quantity: 'length',
    meaning: 'dial movement, not rounded',
    parts: { divisions: 'count', dialled: 'length', error: 'length' },
  },
  formula:
    'dial reads diameter: movement = change; dial reads radius: movement = change ÷ 2; ' +
    'divisions = movement ÷ graduation, to the nearest, a half to the even division',
  source: DIAL_SOURCE,
  cautions: [
    'Take up the backlash: come to the number from the same side as for the cut.',
    'If you overshoot, go back by more than the play and come again.',
  ],
  work: (values) => {
    const change = numberOf(values, 'change');
    const graduation = numberOf(values, 'graduation');
    const perTravel = dialPerTravel(values);
    const value = perTravel === 2 ? change : change / 2;
    const divisions = stepsHalfEven(value, graduation);
    const dialled = divisions * graduation;
    const error = ((dialled - value) * 2) / perTravel;
    const halved = perTravel === 2 ? '' : ' ÷ 2';
    return {
      ok: true,
      value,
      working: worded`${show(change)} mm${halved} ÷ ${show(graduation)} mm a division = ${divisions} divisions`,
      parts: {
        divisions: part(divisions, 'count', 'whole divisions to move'),
        dialled: lengthPart(dialled, 'movement that these divisions show'),
        error: lengthPart(error, 'what the rounding adds to the change of diameter'),
      },
    };
  },
};

export const compoundTravelRule: Rule = {
  name: 'compound-travel',
  title: 'Fine infeed with the compound set over',
  topic: 'passes and dials',
  inputs: [
    aNumber('travel', 'length', [0, 500], 'travel of the compound along its own slide'),
    aNumber('angle', 'angle', [0, 90], 'angle of the compound to the axis of the lathe'),
  ],
  output: {
    quantity: 'length',
    meaning: 'depth a side that this gives',
    parts: { along: 'length' },
  },
  formula: 'depth = travel × sin angle; along the axis = travel × cos angle',
  source: 'geometry; at 5.74° a tenth of the dial',
  cautions: ['The compound reads its own travel; take up its backlash first.'],
  work: (values) => {
    const travel = numberOf(values, 'travel');
    const angle = numberOf(values, 'angle');
    const radians = (angle * Math.PI) / 180;
    const value = travel * Math.sin(radians);
    return {
      ok: true,
      value,
      working: worded`${show(travel)} mm × sin ${show(angle)}° = ${show(value, 4)} mm a side`,
      parts: { along: lengthPart(travel * Math.cos(radians), 'travel along the axis') },
    };
  },
};
