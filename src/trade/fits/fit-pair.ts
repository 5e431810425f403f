/** A hole and a shaft together: how loose or how tight they can come out. */

import { type Worded, worded } from '../../texts/index.ts';
import { aLength, aText } from '../inputs.ts';
import { lengthPart } from '../part.ts';
import type { Rule, RuleValues, Worked } from '../rule.ts';
import { show } from '../show.ts';
import { fault, numberOf, wordOf } from '../values.ts';
import { classDeviations, parseClass } from './deviations.ts';
import { signed } from './limits-of-size.ts';
import { largestSize } from './steps.ts';

/** Clearances in µm; negative is interference. */
function kindOf(most: number, least: number): string {
  if (least >= 0) return 'clearance';
  return most <= 0 ? 'interference' : 'transition';
}

function swapped(hole: string, shaft: string): Worded | undefined {
  const [first, second] = [parseClass(hole), parseClass(shaft)];
  if ('fault' in first || 'fault' in second) return undefined;
  if (first.hole && !second.hole) return undefined;
  return worded`A fit is a hole and a shaft; "${hole}" and "${shaft}" are not: write the hole in capitals (H7) and the shaft in small letters (g6).`;
}

function work(values: RuleValues): Worked {
  const size = numberOf(values, 'size');
  const [holeClass, shaftClass] = [wordOf(values, 'hole').trim(), wordOf(values, 'shaft').trim()];
  const mixed = swapped(holeClass, shaftClass);
  if (mixed !== undefined) return fault(mixed);
  const [hole, shaft] = [classDeviations(size, holeClass), classDeviations(size, shaftClass)];
  if ('fault' in hole) return fault(hole.fault);
  if ('fault' in shaft) return fault(shaft.fault);
  const [most, least] = [hole.upper - shaft.lower, hole.lower - shaft.upper];
  const word = kindOf(most, least);
  return {
    ok: true,
    value: most / 1000,
    word,
    working: worded`${show(size, 7)} ${holeClass}/${shaftClass}: most ${signed(hole.upper)} − (${signed(shaft.lower)}) = ${signed(most)} µm, least ${signed(hole.lower)} − (${signed(shaft.upper)}) = ${signed(least)} µm: ${word} fit`,
    parts: {
      most: lengthPart(most / 1000, 'largest clearance; negative is interference'),
      least: lengthPart(
        least / 1000,
        'smallest clearance, the allowance; negative is interference',
      ),
    },
  };
}

export const fitPair: Rule = {
  name: 'fit',
  title: 'Clearance or interference of a fit',
  topic: 'fits',
  inputs: [
    aLength('size', largestSize, 'nominal size'),
    aText('hole', 'H7', 'tolerance class of the hole, in capitals'),
    aText('shaft', 'g6', 'tolerance class of the shaft, in small letters'),
  ],
  output: {
    quantity: 'length',
    meaning: 'largest clearance; negative is interference',
    parts: { most: 'length', least: 'length' },
  },
  formula: 'most = ES − ei; least (the allowance) = EI − es; below 0 is interference',
  source: 'ISO 286-1; values as in limits-of-size',
  cautions: [
    'An interference fit needs a press or heat: follow the local rules for both, and mind hot parts.',
  ],
  work,
};
