/** Feed of a drill by diameter and material. */

import { worded } from '../../texts/index.ts';
import { materialInput } from '../materials/inputs.ts';
import type { CuttingGroup, Material } from '../materials/material.ts';
import { materialNamed } from '../materials/named.ts';
import type { Rule } from '../rule.ts';
import { show } from '../show.ts';
import { DRILL_TABLES, NAVY, PRACTICE } from '../sources.ts';
import { numberOf, wordOf } from '../values.ts';
import { drillDiameterInput } from './point.ts';

interface FeedBand {
  /** Up to and with this diameter, mm */
  readonly upTo: number;
  /** mm/rev: published low and high end, and the start for steel */
  readonly low: number;
  readonly start: number;
  readonly high: number;
}

const BANDS: readonly FeedBand[] = [
  { upTo: 3.2, low: 0.025, start: 0.04, high: 0.075 },
  { upTo: 6.3, low: 0.05, start: 0.08, high: 0.15 },
  { upTo: 12.7, low: 0.1, start: 0.15, high: 0.25 },
  { upTo: 25.4, low: 0.18, start: 0.25, high: 0.38 },
  { upTo: Number.POSITIVE_INFINITY, low: 0.25, start: 0.35, high: 0.64 },
];

/** Which end of the band: hard and tough low, soft high. */
const END: Readonly<Record<CuttingGroup, 'low' | 'start' | 'high'>> = {
  P: 'start',
  M: 'low',
  K: 'start',
  N: 'high',
  S: 'low',
  H: 'low',
  O: 'start',
};

function endFor(material: Material): 'low' | 'start' | 'high' {
  return material.name === 'tool-steel' ? 'low' : END[material.iso];
}

/** Feed in mm/rev of an HSS twist drill of this diameter (mm). */
export function drillFeed(diameter: number, material: Material): number {
  const band = BANDS.find((one) => diameter <= one.upTo);
  return band?.[endFor(material)] ?? 0;
}

export const drillFeedRule: Rule = {
  name: 'drill-feed',
  title: 'Feed of a twist drill',
  topic: 'drilling',
  inputs: [drillDiameterInput, materialInput],
  output: { quantity: 'feedPerRev', meaning: 'feed each turn' },
  formula:
    'table by diameter: low end for hard and tough, middle for steel and iron, high for soft',
  source: `${NAVY}; ${DRILL_TABLES}. A tutorial table prints 30-60 % more for steel; not used here`,
  cautions: [
    'By hand, ease the feed as the tip breaks through.',
    'Hold the work in a vice or clamp it; never by hand.',
  ],
  work: (values) => {
    const diameter = numberOf(values, 'diameter');
    const material = materialNamed(wordOf(values, 'material'));
    const value = drillFeed(diameter, material);
    const end = { low: 'low end', start: 'start', high: 'high end' }[endFor(material)];
    return {
      ok: true,
      value,
      working: worded`${show(diameter)} mm drill in ${material.title}: ${end} of its band = ${show(value)} mm/rev`,
    };
  },
};

/** A reamer is fed faster than a drill of its size. */
const REAM_FEED = 2;

export const reamFeedRule: Rule = {
  name: 'ream-feed',
  title: 'Feed of a reamer',
  topic: 'drilling',
  inputs: [{ ...drillDiameterInput, meaning: 'diameter of the reamer' }, materialInput],
  output: { quantity: 'feedPerRev', meaning: 'feed each turn' },
  formula: '2 × the feed of a drill of that diameter (2-3 in use)',
  source: PRACTICE,
  cautions: ['Never turn a reamer backwards; bring it out while it turns forwards.'],
  work: (values) => {
    const diameter = numberOf(values, 'diameter');
    const base = drillFeed(diameter, materialNamed(wordOf(values, 'material')));
    const value = base * REAM_FEED;
    const working = worded`${show(base)} mm/rev for a drill × ${REAM_FEED} = ${show(value)} mm/rev`;
    return { ok: true, value, working };
  },
};
