/** Deep holes: slower, gentler, and out again to clear the chips. */

import { worded } from '../../texts/index.ts';
import { aLength } from '../inputs.ts';
import { materialInput } from '../materials/inputs.ts';
import type { Material } from '../materials/material.ts';
import { materialNamed } from '../materials/named.ts';
import { lengthPart, part } from '../part.ts';
import type { Rule } from '../rule.ts';
import { show, showList } from '../show.ts';
import { DRILL_GUIDE, PRACTICE } from '../sources.ts';
import { fault, numberOf, wordOf } from '../values.ts';
import { drillDiameterInput } from './point.ts';

export interface DeepShare {
  readonly speed: number;
  readonly feed: number;
}

/** Share of speed and feed that is left, by depth in diameters; the deepest line counts beyond it. */
const SHARES: readonly (DeepShare & { readonly from: number })[] = [
  { from: 6, speed: 0.6, feed: 0.8 },
  { from: 5, speed: 0.7, feed: 0.8 },
  { from: 4, speed: 0.8, feed: 0.9 },
  { from: 3, speed: 0.9, feed: 0.9 },
];

/** What is left of speed and feed in a hole so deep; 1 and 1 below three diameters. */
export function deepShare(depth: number, diameter: number): DeepShare {
  const ratio = depth / diameter;
  return SHARES.find((row) => ratio >= row.from - 1e-9) ?? { speed: 1, feed: 1 };
}

export const depthInput = aLength('depth', 3000, 'depth of the hole');

export const deepHoleRule: Rule = {
  name: 'deep-hole',
  title: 'Share of the speed in a deep hole',
  topic: 'drilling',
  inputs: [drillDiameterInput, depthInput],
  output: {
    quantity: 'percent',
    meaning: 'share of the usual speed',
    parts: { feedShare: 'percent', ratio: 'ratio' },
  },
  formula: 'from 3 D deep 90 % speed and 90 % feed; 4 D 80, 90; 5 D 70, 80; 6 D and more 60, 80',
  source: `${DRILL_GUIDE} (6 D: 60 to 65 %)`,
  cautions: ['Beyond six diameters a twist drill needs more care than a number can give.'],
  work: (values) => {
    const diameter = numberOf(values, 'diameter');
    const depth = numberOf(values, 'depth');
    const share = deepShare(depth, diameter);
    const percent = Math.round(share.speed * 100);
    const feedPercent = Math.round(share.feed * 100);
    return {
      ok: true,
      value: percent,
      working: worded`${show(depth)} ÷ ${show(diameter)} = ${show(depth / diameter, 3)} diameters deep: ${percent} % of the speed, ${feedPercent} % of the feed`,
      parts: {
        feedShare: part(feedPercent, 'percent', 'share of the usual feed'),
        ratio: part(depth / diameter, 'ratio', 'depth in diameters'),
      },
    };
  },
};

/** First and further pecks in diameters. Sticky chips and work that hardens want short ones. */
const PECKS = {
  sticky: { first: 1, next: 0.5 },
  plain: { first: 1.5, next: 1 },
  free: { first: 3, next: 1 },
} as const;

const STICKY = ['M', 'S', 'O'];
const FREE = ['free-cutting-brass', 'free-machining-steel'];

function peckKind({ name, iso }: Material): keyof typeof PECKS {
  if (STICKY.includes(iso) || name === 'copper') return 'sticky';
  return FREE.includes(name) || iso === 'K' ? 'free' : 'plain';
}

/** More pecks than this and the drill is the wrong one. */
const MOST_PECKS = 200;

/** Depths, mm, at which to come out, the last one the full depth. */
export function peckDepths(depth: number, first: number, next: number): readonly number[] {
  const depths: number[] = [];
  let at = first;
  while (at < depth - 1e-9 && depths.length < MOST_PECKS) {
    depths.push(at);
    at += next;
  }
  return [...depths, depth];
}

export const peckPlanRule: Rule = {
  name: 'peck-plan',
  title: 'When to come out and clear the chips',
  topic: 'drilling',
  inputs: [drillDiameterInput, depthInput, materialInput],
  output: { quantity: 'count', meaning: 'pecks', parts: { depths: 'length', step: 'length' } },
  formula:
    'first peck 1.5 D, then 1 D; free-cutting metal 3 D, then 1 D; sticky or work-hardening 1 D, then 0.5 D',
  source: `${PRACTICE}; that the drill must come out often: ${DRILL_GUIDE}`,
  cautions: [
    'Come right out at every peck and brush the chips off; never with the fingers.',
    'Do not let the drill rub at the bottom.',
  ],
  work: (values) => {
    const diameter = numberOf(values, 'diameter');
    const depth = numberOf(values, 'depth');
    const material = materialNamed(wordOf(values, 'material'));
    const { first, next } = PECKS[peckKind(material)];
    if (depth > diameter * (first + next * (MOST_PECKS - 1))) {
      return fault(
        worded`${show(depth)} mm with a ${show(diameter)} mm drill takes more than ${MOST_PECKS} pecks; use a gun drill or drill from both sides.`,
      );
    }
    const depths = peckDepths(depth, diameter * first, diameter * next);
    return {
      ok: true,
      value: depths.length,
      working: worded`${material.title}: first ${first} × ${show(diameter)}, then ${next} × ${show(diameter)}: out at ${showList(depths)} mm`,
      parts: {
        depths: lengthPart(depths, 'depths at which to come out'),
        step: lengthPart(diameter * next, 'further peck'),
      },
    };
  },
};
