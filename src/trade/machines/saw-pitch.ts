/** Teeth of a saw blade for the stock: three at least in the cut. */

import { worded } from '../../texts/index.ts';
import { aChoice, aLength, aList } from '../inputs.ts';
import { part } from '../part.ts';
import type { Rule, RuleValues, Worked } from '../rule.ts';
import { show } from '../show.ts';
import { fault, listOf, numberOf, wordOf } from '../values.ts';

const INCH = 25.4;
const LEAST_TEETH = 3;
/** More than this and the gullets pack full. Common practice, no source. */
const MOST_TEETH = 24;
/** Blades that are sold, teeth an inch. Source: common practice, no source. */
const usualBlades = [2, 3, 4, 6, 8, 10, 14, 18, 24, 32];

/** Teeth an inch within which so many teeth stand in the cut. `thickness` in mm. */
export function pitchSpan(thickness: number): readonly [least: number, most: number] {
  return [(LEAST_TEETH * INCH) / thickness, (MOST_TEETH * INCH) / thickness];
}

function tooThin(thickness: number, wanted: number): Worked {
  return fault(
    worded`${show(thickness)} mm needs ${show(wanted, 3)} teeth an inch for three in the cut, more than any of these blades has; clamp it between scrap, or use snips or a hacksaw at a slant.`,
  );
}

function work(values: RuleValues): Worked {
  const thickness = numberOf(values, 'thickness');
  const [least, most] = pitchSpan(thickness);
  const blades = listOf(values, 'blades').length > 0 ? listOf(values, 'blades') : usualBlades;
  const fine = blades.filter((teeth) => teeth >= least * (1 - 1e-9));
  if (fine.length === 0) return tooThin(thickness, least);
  const blade = Math.min(...fine);
  const inCut = (thickness / INCH) * blade;
  const packed =
    inCut > MOST_TEETH ? '; more than 24 pack the gullets, go slowly and clear often' : '';
  const tube = wordOf(values, 'shape') === 'wall' ? ' (the wall, not the outside)' : '';
  return {
    ok: true,
    value: blade,
    working: worded`3 × 25.4 ÷ ${show(thickness)}${tube} = at least ${show(least, 3)} teeth an inch, at most about ${show(most, 3)}; blade ${show(blade)}: ${show(inCut, 3)} teeth in the cut${packed}`,
    parts: {
      least: part(least, 'pitchCount', 'least teeth an inch'),
      most: part(most, 'pitchCount', 'most teeth an inch'),
      inCut: part(inCut, 'ratio', 'teeth in the cut with that blade'),
    },
  };
}

export const sawPitch: Rule = {
  name: 'saw-pitch',
  title: 'Teeth of the saw blade',
  topic: 'other machines',
  inputs: [
    aLength('thickness', 1000, 'thickness the teeth pass through; of a tube the wall'),
    aChoice('shape', ['solid', 'wall'], 'solid stock, or the wall of a tube or angle', {
      default: 'solid',
      said: { solid: ['bar', 'round bar'], wall: ['tube', 'pipe', 'angle', 'channel'] },
    }),
    aList('blades', 'pitchCount', [1, 40], 'blades you have', true),
  ],
  output: {
    quantity: 'pitchCount',
    meaning: 'teeth an inch: the coarsest blade with three in the cut',
    parts: { least: 'pitchCount', most: 'pitchCount', inCut: 'ratio' },
  },
  formula: 'teeth an inch ≥ 3 ÷ thickness in inches; about 24 in the cut at most',
  source:
    'Agricultural Mechanics and Technology Systems (2017) p. 202: three teeth in the cut; US Navy training text 14119 takes two; upper end: common practice, no source',
  cautions: [
    'Stop the saw before a blade is changed; gloves for handling the blade, none at the running saw.',
    'Bring the guide down close over the work and push with a block, not with fingers.',
  ],
  work,
};
