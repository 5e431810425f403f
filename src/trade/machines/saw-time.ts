/** How long a saw takes through a section. */

import { worded } from '../../texts/index.ts';
import { aChoice, aLength, aNumber } from '../inputs.ts';
import { part } from '../part.ts';
import type { Rule, RuleValues, Worked } from '../rule.ts';
import { show } from '../show.ts';
import { fault, numberIf, numberOf, wordOf } from '../values.ts';

const SQUARE_MM = 100;

function sectionOf(values: RuleValues): number | undefined {
  const width = numberOf(values, 'width');
  if (wordOf(values, 'section') === 'round-bar') return (Math.PI * width * width) / 4;
  const height = numberIf(values, 'height');
  return height === undefined ? undefined : width * height;
}

function work(values: RuleValues): Worked {
  const [rate, area] = [numberOf(values, 'rate'), sectionOf(values)];
  if (area === undefined) {
    return fault(worded`A flat bar has a height beside its width; give the height too.`);
  }
  const value = area / SQUARE_MM / rate;
  return {
    ok: true,
    value,
    working: worded`${show(area / SQUARE_MM, 4)} cm² ÷ ${show(rate)} cm²/min = ${show(value, 3)} min`,
    parts: { area: part(area, 'area', 'area of the section') },
  };
}

export const sawTime: Rule = {
  name: 'saw-time',
  title: 'Time of a saw cut',
  topic: 'other machines',
  inputs: [
    aLength('width', 1000, 'width of the section, or its diameter'),
    aLength('height', 1000, 'height of a flat bar', { optional: true }),
    aChoice('section', ['round-bar', 'flat-bar'], 'section of the bar', {
      default: 'round-bar',
      said: { 'round-bar': ['round bar', 'round'], 'flat-bar': ['flat bar', 'flat', 'square'] },
    }),
    aNumber('rate', 'areaRate', [0, 1000], 'area that the saw cuts in a minute', {
      aboveMin: true,
    }),
  ],
  output: { quantity: 'time', meaning: 'time of one cut', parts: { area: 'area' } },
  formula: 't = area ÷ cutting rate',
  source: 'geometry; the rate is that of your saw and blade',
  cautions: ['Never press the head down to saw faster: the weight and the valve feed it.'],
  work,
};
