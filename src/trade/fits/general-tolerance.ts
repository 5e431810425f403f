/** What a dimension without its own tolerance is allowed, when the drawing says ISO 2768. */

import { worded } from '../../texts/index.ts';
import { aChoice, aLength } from '../inputs.ts';
import { lengthPart } from '../part.ts';
import type { Rule, RuleValues, Worked } from '../rule.ts';
import { show } from '../show.ts';
import { fault, numberOf, wordOf } from '../values.ts';
import {
  angular,
  corner,
  type GeneralClass,
  generalClasses,
  linear,
  plusMinusOf,
} from './general-table.ts';

const classInput = aChoice('class', generalClasses, 'fine, medium, coarse or very coarse', {
  default: 'm',
  said: { f: ['fine'], m: ['medium'], c: ['coarse'], v: ['very coarse'] },
});

const classOf = (values: RuleValues) =>
  generalClasses.find((one) => one === wordOf(values, 'class')) ?? 'm';

function noneFor(size: number, wanted: GeneralClass): Worked {
  return fault(
    worded`ISO 2768-1 gives no tolerance of class ${wanted} at ${show(size)} mm; the drawing must state one.`,
  );
}

function workLength(values: RuleValues): Worked {
  const [size, wanted, kind] = [numberOf(values, 'size'), classOf(values), wordOf(values, 'kind')];
  const plusMinus = plusMinusOf(kind === 'corner' ? corner : linear, size, wanted);
  if (Number.isNaN(plusMinus)) return noneFor(size, wanted);
  const [lower, upper] = [size - plusMinus, size + plusMinus];
  return {
    ok: true,
    value: plusMinus,
    working: worded`${show(size)} mm, ISO 2768-${wanted}, ${kind}: ± ${show(plusMinus)} mm, so ${show(lower)} to ${show(upper)} mm`,
    parts: {
      lower: lengthPart(lower, 'lower limit'),
      upper: lengthPart(upper, 'upper limit'),
    },
  };
}

export const generalTolerance: Rule = {
  name: 'general-tolerance',
  title: 'General tolerance of a length',
  topic: 'fits',
  inputs: [
    aLength('size', 4000, 'nominal size'),
    classInput,
    aChoice('kind', ['linear', 'corner'], 'a length, or a corner (outside radius or chamfer)', {
      default: 'linear',
      said: { linear: ['length', 'diameter'], corner: ['chamfer', 'radius', 'edge'] },
    }),
  ],
  output: {
    quantity: 'length',
    meaning: 'allowed deviation, plus or minus',
    parts: { lower: 'length', upper: 'length' },
  },
  formula: 'table by size step and class; a size on a bound belongs to the lower step',
  source: 'ISO 2768-1:1989 tables 1 and 2, two printed copies',
  cautions: [],
  work: workLength,
};

function workAngle(values: RuleValues): Worked {
  const [leg, wanted] = [numberOf(values, 'shorterLeg'), classOf(values)];
  const plusMinus = plusMinusOf(angular, leg, wanted);
  if (Number.isNaN(plusMinus)) return noneFor(leg, wanted);
  const minutes = show(plusMinus * 60);
  return {
    ok: true,
    value: plusMinus,
    working: worded`shorter leg ${show(leg)} mm, ISO 2768-${wanted}: ± ${show(plusMinus)}° (${minutes} minutes)`,
  };
}

export const generalAngleTolerance: Rule = {
  name: 'general-angle-tolerance',
  title: 'General tolerance of an angle',
  topic: 'fits',
  inputs: [aLength('shorterLeg', 4000, 'shorter leg of the angle'), classInput],
  output: { quantity: 'angle', meaning: 'allowed deviation, plus or minus' },
  formula: 'table by the shorter leg and class',
  source: 'from memory: ISO 2768-1:1989 table 3',
  cautions: [],
  work: workAngle,
};
