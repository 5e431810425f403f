/** Which of the drills at hand comes nearest to a wanted percent of thread. */

import { worded } from '../../texts/index.ts';
import { aChoice, aList, aNumber } from '../inputs.ts';
import { lengthPart, part } from '../part.ts';
import type { Rule, RuleValues, Worked } from '../rule.ts';
import { show } from '../show.ts';
import { fault, listOf, numberOf, wordOf } from '../values.ts';
import { parseThread, type Thread } from './designation.ts';
import { type Drill, inchDrills, metricDrills, nearestDrill } from './drill-sizes.ts';
import { threadInput } from './profile.ts';

/** What 100 % takes off the diameter, in pitches: 3/4 H a side, or 5/8 H a side. */
export const conventions = {
  handbook: (3 / 4) * Math.sqrt(3),
  'basic-profile': (5 / 8) * Math.sqrt(3),
} as const;

type Convention = keyof typeof conventions;

const conventionOf = (values: RuleValues): Convention =>
  wordOf(values, 'convention') === 'basic-profile' ? 'basic-profile' : 'handbook';

/** Percent of thread by one convention; lengths in mm. */
export function percentOfThread(thread: Thread, hole: number, convention: Convention): number {
  return ((thread.major - hole) / (conventions[convention] * thread.pitch)) * 100;
}

/** Above this the tap's torque climbs fast and little strength is won. Source: usual targets of two tap-drill charts. */
const HIGH_PERCENT = 83;

const CAUTIONS = [
  'Above about 80 % of thread (handbook) the torque climbs fast and taps break: a larger drill is rarely weaker.',
  'Back the tap off to break the chip, use cutting oil, and never tap with a hand near a turning spindle.',
  'In stainless and tough steels take 50 to 60 %; in aluminium, brass and thin walls about 75 %.',
];

const conventionInput = aChoice(
  'convention',
  ['handbook', 'basic-profile'],
  'what 100 % means: 1.299 P off the diameter (American handbooks) or 1.0825 P (ISO basic profile)',
  {
    default: 'handbook',
    said: { handbook: ['american', 'hand book'], 'basic-profile': ['iso', 'basic profile'] },
  },
);

function drillsOf(values: RuleValues): readonly Drill[] {
  const own = listOf(values, 'drills');
  if (own.length > 0) return own.map((size) => ({ name: show(size), size }));
  return wordOf(values, 'drillSet') === 'inch' ? inchDrills : metricDrills;
}

const bothPercents = (thread: Thread, hole: number) => {
  const [handbook, basic] = [
    percentOfThread(thread, hole, 'handbook'),
    percentOfThread(thread, hole, 'basic-profile'),
  ];
  return worded`${show(handbook, 3)} % by the handbook's 1.299 P, ${show(basic, 3)} % by the ISO basic profile's 1.0825 P`;
};

function work(values: RuleValues): Worked {
  const thread = parseThread(wordOf(values, 'thread'));
  if ('fault' in thread) return fault(thread.fault);
  const [percent, convention] = [numberOf(values, 'percent'), conventionOf(values)];
  const share = conventions[convention];
  const hole = thread.major - (share * thread.pitch * percent) / 100;
  const drill = nearestDrill(hole, drillsOf(values));
  if (drill === undefined || hole <= 0)
    return fault(worded`${thread.name} leaves no hole to drill.`);
  const reached = percentOfThread(thread, drill.size, convention);
  const high = percentOfThread(thread, drill.size, 'handbook') > HIGH_PERCENT;
  return {
    ok: true,
    value: hole,
    word: drill.name,
    working: worded`${thread.name}: ${show(thread.major, 6)} − ${show(share, 6)} × ${show(thread.pitch, 5)} × ${show(percent)} % = ${show(hole, 5)} mm; nearest drill ${drill.name} (${show(drill.size, 5)} mm): ${bothPercents(thread, drill.size)}${high ? '; a high percent, the tap may break' : ''}`,
    parts: {
      drill: lengthPart(drill.size, 'nearest drill'),
      percent: part(reached, 'percent', worded`percent of thread with it, ${convention}`),
      handbook: part(
        percentOfThread(thread, drill.size, 'handbook'),
        'percent',
        'percent of 1.299 P (3/4 H a side)',
      ),
      basicProfile: part(
        percentOfThread(thread, drill.size, 'basic-profile'),
        'percent',
        'percent of 1.0825 P (5/8 H a side)',
      ),
      ruleOfThumb: lengthPart(thread.major - thread.pitch, 'diameter less pitch, 77 % by handbook'),
    },
  };
}

export const tapDrillAtHand: Rule = {
  name: 'tap-drill-at-hand',
  title: 'Drill at hand for a percent of thread',
  topic: 'threads',
  inputs: [
    threadInput,
    aNumber('percent', 'percent', [30, 100], 'wanted percent of thread', { default: 75 }),
    conventionInput,
    aChoice('drillSet', ['metric', 'inch'], 'drills at hand', {
      default: 'metric',
      said: { metric: ['millimetre drills'], inch: ['imperial', 'number drills', 'inch drills'] },
    }),
    aList('drills', 'length', [0.1, 100], 'drills at hand, when they are not a whole set', true),
  ],
  output: {
    quantity: 'length',
    meaning: 'hole for that percent of thread',
    parts: {
      drill: 'length',
      percent: 'percent',
      handbook: 'percent',
      basicProfile: 'percent',
      ruleOfThumb: 'length',
    },
  },
  formula: 'hole = d − 1.29904 P × percent (handbook) or d − 1.08253 P × percent (basic profile)',
  source:
    "tap maker's technical formulas; the other convention from memory: ISO 68-1: the same hole reads 1.2 times higher there",
  cautions: CAUTIONS,
  work,
};
