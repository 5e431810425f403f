/** The feed a tooth that still makes a whole chip when little of the cutter is in the work. */

import { worded } from '../../texts/index.ts';
import { aLength, aNumber } from '../inputs.ts';
import { part } from '../part.ts';
import type { Rule, RuleValues, Worked } from '../rule.ts';
import { show } from '../show.ts';
import { fault, numberOf } from '../values.ts';

/** Thickest chip over feed a tooth: 2 √(k − k²) below half the cutter, else 1; k = width ÷ diameter. */
export function radialThinning(width: number, cutter: number): number {
  const share = width / cutter;
  return share >= 0.5 ? 1 : 2 * Math.sqrt(share - share * share);
}

function work(values: RuleValues): Worked {
  const [chip, cutter] = [numberOf(values, 'chip'), numberOf(values, 'cutter')];
  const [width, lead] = [numberOf(values, 'width'), numberOf(values, 'edgeAngle')];
  if (width > cutter) {
    return fault(
      worded`A cut ${show(width)} mm wide is wider than the ${show(cutter)} mm cutter; check both.`,
    );
  }
  const radial = radialThinning(width, cutter);
  const axial = Math.sin((lead * Math.PI) / 180);
  const value = chip / (radial * axial);
  return {
    ok: true,
    value,
    working: worded`k = ${show(width)} ÷ ${show(cutter)} = ${show(width / cutter, 3)}, thinning ${show(radial, 4)}; sin ${show(lead)}° = ${show(axial, 4)}; ${show(chip)} ÷ (${show(radial, 4)} × ${show(axial, 4)}) = ${show(value, 4)} mm a tooth`,
    parts: { factor: part(radial * axial, 'ratio', 'chip thickness over feed a tooth') },
  };
}

export const chipThinning: Rule = {
  name: 'chip-thinning',
  title: 'Feed a tooth for a wanted chip',
  topic: 'milling',
  inputs: [
    aNumber('chip', 'feedPerTooth', [0, 2], 'thickest chip wanted', { aboveMin: true }),
    aLength('cutter', 1000, 'diameter of the cutter'),
    aLength('width', 1000, 'width of the cut across the cutter'),
    aNumber('edgeAngle', 'angle', [5, 90], 'angle of the main edge to the feed; 90 is a shoulder', {
      default: 90,
    }),
  ],
  output: {
    quantity: 'feedPerTooth',
    meaning: 'feed a tooth to set',
    parts: { factor: 'ratio' },
  },
  formula:
    'fz = h ÷ (2 √(k − k²) sin κ), k = width ÷ diameter; no thinning from half the cutter on',
  source: 'geometry; Milling chip thickness pages (cutter maker, titles not kept)',
  cautions: [
    'A thinner cut bears more feed, not more depth: the spindle and the work hold rule still.',
  ],
  work,
};
