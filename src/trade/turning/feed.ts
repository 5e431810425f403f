/** Feeds: what an operation likes, what the card has, and how fast that moves the tool. */

import { worded } from '../../texts/index.ts';
import { aChoice, aList, aNumber } from '../inputs.ts';
import { materialInput, toolInput, toolOf } from '../materials/inputs.ts';
import type { CuttingGroup } from '../materials/material.ts';
import { materialNamed } from '../materials/named.ts';
import type { ToolMaterial } from '../materials/tool.ts';
import type { Rule } from '../rule.ts';
import { show } from '../show.ts';
import { GROOVER, PRACTICE } from '../sources.ts';
import { fault, listOf, numberOf, wordOf } from '../values.ts';
import { spindleInput } from './spindle-speed.ts';

/** mm/rev for a manual lathe: the printed ranges for slender work and finishing, low side. */
const FEEDS: Readonly<Record<string, readonly [hss: number, carbide: number]>> = {
  rough: [0.2, 0.25],
  finish: [0.08, 0.1],
  face: [0.1, 0.15],
  bore: [0.1, 0.12],
  'finish-bore': [0.06, 0.08],
  part: [0.05, 0.08],
  groove: [0.05, 0.08],
  chamfer: [0.1, 0.1],
  knurl: [0.3, 0.3],
};

/** Share of a roughing feed by group: less where the work hardens or is hot, more in soft metal. */
const ROUGHING_SHARE: Readonly<Record<CuttingGroup, number>> = {
  P: 1,
  M: 0.8,
  K: 1,
  N: 1.25,
  S: 0.8,
  H: 0.5,
  O: 1,
};

const ROUGHING = ['rough', 'face', 'bore'];

export const feedInput = aNumber('feedPerRev', 'feedPerRev', [0, 5], 'feed of the tool each turn', {
  aboveMin: true,
});

/** Feed in mm/rev for a cut with a tool in a group of materials. */
export function turningFeed(cut: string, tool: ToolMaterial, group: CuttingGroup): number {
  const [hss = 0, carbide = 0] = FEEDS[cut] ?? [];
  const share = ROUGHING.includes(cut) ? ROUGHING_SHARE[group] : 1;
  return (tool === 'hss' ? hss : carbide) * share;
}

export const turningFeedRule: Rule = {
  name: 'turning-feed',
  title: 'Feed for a turning cut',
  topic: 'speeds and feeds',
  inputs: [aChoice('operation', Object.keys(FEEDS), 'the cut'), toolInput, materialInput],
  output: { quantity: 'feedPerRev', meaning: 'feed to look for on the card' },
  formula: 'table by cut and tool × the share of the material group for roughing cuts',
  source:
    'US Army OD1645 (slender work 0.008-0.015 in/rev, others 0.010-0.020; finishing 0.003-0.010), low side; ' +
    `Machine-tool speeds and feeds hand-out; parting, boring, knurling and shares: ${PRACTICE}`,
  cautions: [
    'Halve the parting feed for the last 2 mm of diameter.',
    'In stainless steel keep the feed on; a rubbing tool hardens the skin.',
  ],
  work: (values) => {
    const cut = wordOf(values, 'operation');
    const row = materialNamed(wordOf(values, 'material'));
    const tool = toolOf(values);
    const base = turningFeed(cut, tool, 'P');
    const value = turningFeed(cut, tool, row.iso);
    const share = value === base ? '' : worded` × ${show(value / base)} for group ${row.iso}`;
    const sum = share === '' ? '' : worded` = ${show(value)} mm/rev`;
    return {
      ok: true,
      value,
      working: worded`${cut}, ${tool}: ${show(base)} mm/rev${share}${sum}`,
    };
  },
};

/** How far the slowest feed on the card may be above the wanted one. */
const COARSER_ALLOWED = 2;
const NEAR = 1 + 1e-9;

export const cardFeedRule: Rule = {
  name: 'card-feed',
  title: "Feed to set on this machine's card",
  topic: 'speeds and feeds',
  inputs: [
    { ...feedInput, meaning: 'feed that is wanted' },
    aList('feeds', 'feedPerRev', [0.001, 10], "feeds on the machine's card"),
  ],
  output: { quantity: 'feedPerRev', meaning: 'feed to set' },
  formula: 'the highest card feed not above the wanted one',
  source: PRACTICE,
  cautions: ['Change feed gears only with the spindle stopped.'],
  work: (values) => {
    const wanted = numberOf(values, 'feedPerRev');
    const feeds = listOf(values, 'feeds');
    const allowed = feeds.filter((feed) => feed <= wanted * NEAR);
    const finest = Math.min(...feeds);
    if (allowed.length > 0) {
      const value = Math.max(...allowed);
      const ruledBy =
        value === Math.max(...feeds) && value * NEAR < wanted
          ? "the card's coarsest feed"
          : 'the wanted feed';
      const working = worded`wanted ${show(wanted)}; next lower on the card: ${show(value)} mm/rev`;
      return { ok: true, value, working, ruledBy };
    }
    if (finest > wanted * COARSER_ALLOWED) {
      return fault(
        worded`The finest feed on the card is ${show(finest)} mm/rev, more than twice the wanted ${show(wanted)}; feed by hand.`,
      );
    }
    const working = worded`wanted ${show(wanted)}; the finest on the card is coarser: ${show(finest)} mm/rev`;
    return { ok: true, value: finest, working, ruledBy: "the card's finest feed" };
  },
};

export const feedRateRule: Rule = {
  name: 'feed-rate',
  title: 'Feed rate of the tool',
  topic: 'speeds and feeds',
  inputs: [feedInput, spindleInput],
  output: { quantity: 'feedRate', meaning: 'travel of the tool in a minute' },
  formula: 'vf = f n',
  source: GROOVER,
  cautions: [],
  work: (values) => {
    const feed = numberOf(values, 'feedPerRev');
    const spindle = numberOf(values, 'spindleSpeed');
    const value = feed * spindle;
    const working = worded`${show(feed)} mm/rev × ${show(spindle)} rev/min = ${show(value, 4)} mm/min`;
    return { ok: true, value, working };
  },
};

export const feedPerRevRule: Rule = {
  name: 'feed-per-rev',
  title: 'Feed each turn at a feed rate',
  topic: 'speeds and feeds',
  inputs: [
    aNumber('feedRate', 'feedRate', [0, 100_000], 'travel of the tool in a minute', {
      aboveMin: true,
    }),
    spindleInput,
  ],
  output: { quantity: 'feedPerRev', meaning: 'feed each turn' },
  formula: 'f = vf ÷ n',
  source: GROOVER,
  cautions: [],
  work: (values) => {
    const rate = numberOf(values, 'feedRate');
    const spindle = numberOf(values, 'spindleSpeed');
    const value = rate / spindle;
    const working = worded`${show(rate)} mm/min ÷ ${show(spindle)} rev/min = ${show(value, 4)} mm/rev`;
    return { ok: true, value, working };
  },
};
