/** What roughness a feed and a nose radius can leave, and the feed for a wanted one. */

import { type Worded, worded } from '../../texts/index.ts';
import { aLength, aNumber } from '../inputs.ts';
import { part } from '../part.ts';
import type { Rule } from '../rule.ts';
import { show } from '../show.ts';
import { feedInput } from '../turning/feed.ts';
import { fault, numberOf } from '../values.ts';

const topic = 'surface';
/** Above this share of the nose radius the feed leaves the round of the nose. */
const NOSE_SHARE = 0.8;

const noseInput = aLength('noseRadius', 10, 'radius of the nose of the tool');
const roughnessInput = aNumber('roughness', 'roughness', [0, 100], 'wanted Ra', { aboveMin: true });

const cautions = [
  'Theory only: at low speed ductile metal comes out about twice as rough, at 100 m/min 1.1 to 1.3 times.',
];

function noseFault(feed: number, nose: number): Worded | undefined {
  if (feed <= 2 * nose) return undefined;
  return worded`A feed of ${show(feed)} mm/rev is more than the whole width of a ${show(nose)} mm nose; feed less or use a larger nose.`;
}

function beyondNose(feed: number, nose: number): string {
  return feed > NOSE_SHARE * nose + 1e-12 ? ' (feed above 0.8 × the nose: expect more)' : '';
}

export const roughnessPeakRule: Rule = {
  name: 'roughness-peak',
  title: 'Height of the feed marks (Rz in theory)',
  topic,
  inputs: [feedInput, noseInput],
  output: {
    quantity: 'roughness',
    meaning: 'peak to valley in theory',
    parts: { exact: 'roughness' },
  },
  formula: 'Rt = f² ÷ (8 r); exact r − √(r² − f² ÷ 4)',
  source: 'geometry; El-Hofy, Fundamentals of Machining Processes 2e, chapter on roughness',
  cautions,
  work: (values) => {
    const feed = numberOf(values, 'feedPerRev');
    const nose = numberOf(values, 'noseRadius');
    const wrong = noseFault(feed, nose);
    if (wrong !== undefined) return fault(wrong);
    const value = (1000 * feed ** 2) / (8 * nose);
    const exact = 1000 * (nose - Math.sqrt(nose ** 2 - feed ** 2 / 4));
    return {
      ok: true,
      value,
      working: worded`1000 × ${show(feed)}² ÷ (8 × ${show(nose)}) = ${show(value, 4)} µm${beyondNose(feed, nose)}`,
      parts: { exact: part(exact, 'roughness', 'by the circle instead of the parabola') },
    };
  },
};

export const roughnessAverageRule: Rule = {
  name: 'roughness-average',
  title: 'Ra in theory from feed and nose radius',
  topic,
  inputs: [
    feedInput,
    noseInput,
    aNumber('ratio', 'ratio', [1, 5], 'how much rougher the metal comes out than theory', {
      default: 1,
    }),
  ],
  output: {
    quantity: 'roughness',
    meaning: 'average roughness Ra',
    parts: { parabola: 'roughness' },
  },
  formula: 'Ra = f² ÷ (32 r) × ratio',
  source:
    'from memory: Groover. The mean line of a parabola gives 31.18 for 32 (from memory: Boothroyd), 2.6 % more',
  cautions,
  work: (values) => {
    const feed = numberOf(values, 'feedPerRev');
    const nose = numberOf(values, 'noseRadius');
    const wrong = noseFault(feed, nose);
    if (wrong !== undefined) return fault(wrong);
    const ratio = numberOf(values, 'ratio');
    const value = ((1000 * feed ** 2) / (32 * nose)) * ratio;
    const parabola = ((1000 * feed ** 2) / (18 * Math.sqrt(3) * nose)) * ratio;
    const times = ratio === 1 ? '' : worded` × ${show(ratio)}`;
    return {
      ok: true,
      value,
      working: worded`1000 × ${show(feed)}² ÷ (32 × ${show(nose)})${times} = ${show(value, 4)} µm${beyondNose(feed, nose)}`,
      parts: { parabola: part(parabola, 'roughness', 'with 31.18 for 32') },
    };
  },
};

export const feedForRoughnessRule: Rule = {
  name: 'feed-for-roughness',
  title: 'Feed for a wanted roughness',
  topic,
  inputs: [
    roughnessInput,
    noseInput,
    aNumber('margin', 'ratio', [0.3, 1], 'share of the theoretical feed to use (0.7 is usual)', {
      default: 1,
    }),
  ],
  output: { quantity: 'feedPerRev', meaning: 'largest feed' },
  formula: 'f = √(32 r Ra) × margin, not above 0.8 r',
  source: 'from memory: Groover; 0.8 × the nose and a margin of 0.7: common practice, no source',
  cautions,
  work: (values) => {
    const roughness = numberOf(values, 'roughness');
    const nose = numberOf(values, 'noseRadius');
    const margin = numberOf(values, 'margin');
    const theory = Math.sqrt((32 * nose * roughness) / 1000) * margin;
    const cap = NOSE_SHARE * nose;
    const times = margin === 1 ? '' : worded` × ${show(margin)}`;
    const sum = worded`√(32 × ${show(nose)} × ${show(roughness)} ÷ 1000)${times} = ${show(theory, 4)} mm/rev`;
    if (theory <= cap) return { ok: true, value: theory, working: sum, ruledBy: 'the roughness' };
    const working = worded`${sum}; the nose allows 0.8 × ${show(nose)} = ${show(cap, 4)}`;
    return { ok: true, value: cap, working, ruledBy: 'the nose radius' };
  },
};

export const sharpRoughnessRule: Rule = {
  name: 'roughness-sharp-tool',
  title: 'Height of the feed marks of a tool without a nose radius',
  topic,
  inputs: [
    feedInput,
    aNumber('approachAngle', 'angle', [1, 90], 'angle of the cutting edge to the feed'),
    aNumber('trailingAngle', 'angle', [1, 90], 'angle of the trailing edge to the feed'),
  ],
  output: {
    quantity: 'roughness',
    meaning: 'peak to valley in theory',
    parts: { average: 'roughness' },
  },
  formula: "Rt = f ÷ (cot κ + cot κ'); Ra = Rt ÷ 4",
  source: 'geometry (triangle)',
  cautions,
  work: (values) => {
    const feed = numberOf(values, 'feedPerRev');
    const lead = numberOf(values, 'approachAngle');
    const trail = numberOf(values, 'trailingAngle');
    const cot = (degrees: number) => 1 / Math.tan((degrees * Math.PI) / 180);
    if (lead + trail > 179) {
      return fault('Two square edges leave no marks that this formula knows; give real angles.');
    }
    const value = (1000 * feed) / (cot(lead) + cot(trail));
    return {
      ok: true,
      value,
      working: worded`1000 × ${show(feed)} ÷ (cot ${show(lead)}° + cot ${show(trail)}°) = ${show(value, 4)} µm`,
      parts: { average: part(value / 4, 'roughness', 'Ra of that triangle') },
    };
  },
};

/** Ra by ISO grade number. */
const GRADES: readonly (readonly [name: string, roughness: number])[] = [
  ['N1', 0.025],
  ['N2', 0.05],
  ['N3', 0.1],
  ['N4', 0.2],
  ['N5', 0.4],
  ['N6', 0.8],
  ['N7', 1.6],
  ['N8', 3.2],
  ['N9', 6.3],
  ['N10', 12.5],
  ['N11', 25],
  ['N12', 50],
];

/** Inch drawings round: 32 µin is 0.813 µm and counts as 0.8. */
const INCH_ROUNDING = 1.02;

export const roughnessGradeRule: Rule = {
  name: 'roughness-grade',
  title: 'Grade number of a roughness',
  topic,
  inputs: [{ ...roughnessInput, max: 50, meaning: 'average roughness Ra' }],
  output: { quantity: 'roughness', meaning: 'Ra limit of the grade; the word is its number' },
  formula:
    'the finest grade whose Ra is not below the roughness, within 2 % (32 µin counts as 0.8 µm)',
  source: 'from memory: ISO 1302 (N1 to N12)',
  cautions: [],
  work: (values) => {
    const roughness = numberOf(values, 'roughness');
    const row = GRADES.find(([, limit]) => roughness <= limit * INCH_ROUNDING);
    if (row === undefined)
      return fault(worded`Ra ${show(roughness)} µm is rougher than N12 (50 µm).`);
    const working = worded`Ra ${show(roughness)} µm is within ${row[0]} (${row[1]} µm)`;
    return { ok: true, value: row[1], word: row[0], working };
  },
};
