/** How deep each pass of a single-point thread goes. */

import { type Worded, worded } from '../../texts/index.ts';
import { aChoice, aCount, aLength, aNumber } from '../inputs.ts';
import { lengthPart, part } from '../part.ts';
import type { Rule, RuleValues, Worked } from '../rule.ts';
import { show, showList } from '../show.ts';
import { fault, numberIf, numberOf, wordOf } from '../values.ts';
import { parseThread } from './designation.ts';
import { profileOf, sideInput, sideOf, threadInput } from './profile.ts';

const DEGREE = Math.PI / 180;
/** mm; a single-point tool rubs below this. Source: common practice, no source. */
const SMALLEST_PASS = 0.02;

/** Passes by pitch up to so many mm. Source: common practice, no source. */
const usualPasses: readonly (readonly [upTo: number, passes: number])[] = [
  [0.5, 4],
  [0.8, 5],
  [1, 6],
  [1.5, 8],
  [2, 10],
  [2.5, 12],
  [3, 14],
  [4, 17],
  [8, 22],
];

/** How many passes a pitch in mm usually takes by hand. */
export function passesFor(pitch: number): number {
  return usualPasses.find(([upTo]) => pitch <= upTo)?.[1] ?? 30;
}

/** Depth from the surface after each pass, mm. Every pass takes the same area off the flanks. */
export function equalArea(depth: number, passes: number): readonly number[] {
  return Array.from({ length: passes }, (_, index) => depth * Math.sqrt((index + 1) / passes));
}

/** Depth after each pass, mm, with a softer first pass, as one threading manual has it. Needs 2 passes. */
export function softenedFirst(depth: number, passes: number): readonly number[] {
  return Array.from(
    { length: passes },
    (_, index) => (depth / Math.sqrt(passes - 1)) * Math.sqrt(index === 0 ? 0.3 : index),
  );
}

/** What each pass adds. */
export function increments(cumulative: readonly number[]): readonly number[] {
  return cumulative.map((depth, index) => depth - (cumulative[index - 1] ?? 0));
}

function thinPassFault(passes: readonly number[], count: number): Worded | undefined {
  const thinnest = Math.min(...passes);
  if (thinnest >= SMALLEST_PASS) return undefined;
  return worded`In ${count} passes the thinnest would be ${show(thinnest, 2)} mm and only rub; take fewer passes.`;
}

function work(values: RuleValues): Worked {
  const thread = parseThread(wordOf(values, 'thread'));
  if ('fault' in thread) return fault(thread.fault);
  const profile = profileOf(thread);
  const usual = sideOf(values) === 'external' ? profile.externalDepth : profile.internalDepth;
  const depth = numberIf(values, 'depth') ?? usual;
  const count = numberIf(values, 'passes') ?? passesFor(thread.pitch);
  const angle = numberOf(values, 'compoundAngle');
  const method = wordOf(values, 'method');
  const cumulative = (method === 'equal-area' ? equalArea : softenedFirst)(depth, count);
  const passes = increments(cumulative);
  const thin = thinPassFault(passes, count);
  if (thin !== undefined) return fault(thin);
  const dial = cumulative.map((one) => one / Math.cos(angle * DEGREE));
  const total = depth / Math.cos(angle * DEGREE);
  return {
    ok: true,
    value: total,
    working: worded`${thread.name}: depth ${show(depth, 4)} mm in ${count} passes; compound at ${show(angle)}°: ${show(depth, 4)} ÷ cos ${show(angle)}° = ${show(total, 4)} mm; compound dial after each pass ${showList(dial, 3)}; then ${numberOf(values, 'springPasses')} passes at the same setting`,
    parts: {
      depth: lengthPart(depth, 'radial depth'),
      cumulative: lengthPart(cumulative, 'radial depth after each pass'),
      passes: lengthPart(passes, 'radial depth each pass adds'),
      dial: lengthPart(dial, 'compound dial after each pass'),
      count: part(count, 'count', 'cutting passes'),
    },
  };
}

export const threadInfeed: Rule = {
  name: 'thread-infeed',
  title: 'Passes of a single-point thread',
  topic: 'threads',
  inputs: [
    threadInput,
    sideInput,
    aCount('passes', [2, 60], 'cutting passes; by the pitch when not given', { optional: true }),
    aChoice('method', ['equal-area', 'softened-first'], 'how the depth is shared out', {
      default: 'equal-area',
      said: { 'equal-area': ['equal area'], 'softened-first': ['soft first pass', 'softer first'] },
    }),
    aNumber('compoundAngle', 'angle', [0, 30], 'compound from the cross slide; 0 feeds straight', {
      default: 29.5,
    }),
    aCount('springPasses', [0, 5], 'passes at the last setting', { default: 2 }),
    aLength('depth', 10, 'radial depth, when it is not the standard one', { optional: true }),
  ],
  output: {
    quantity: 'length',
    meaning: 'whole travel on the compound dial',
    parts: { depth: 'length', cumulative: 'length', passes: 'length', dial: 'length' },
  },
  formula:
    'equal area: a√(i/N); softened: a/√(N − 1) × √φ with φ 0.3, 1, 2 …; compound = radial ÷ cos(angle)',
  source:
    'geometry; softened form: p. 114 of a threading manual (title not kept); numbers of passes: common practice, no source',
  cautions: [
    'Stop, or withdraw the tool, before the shoulder; keep a hand on the half-nut lever, none near the chuck.',
    'Never clear a threading chip with fingers or rag while the spindle turns.',
  ],
  work,
};
