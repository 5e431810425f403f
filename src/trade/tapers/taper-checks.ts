/** Measuring a finished taper: over rollers, with two balls, on a sine bar. */

import { worded } from '../../texts/index.ts';
import { aLength, aNumber } from '../inputs.ts';
import { lengthPart, part } from '../part.ts';
import type { Rule, RuleValues, Worked } from '../rule.ts';
import { show } from '../show.ts';
import { fault, numberOf } from '../values.ts';
import { DEGREE, degreesMinutes, ratioOf } from './taper.ts';

const CAUTION =
  'Take the work off, or stop and isolate the spindle, before rollers, balls or blocks are set.';

function workRollers(values: RuleValues): Worked {
  const [low, high] = [numberOf(values, 'lowReading'), numberOf(values, 'highReading')];
  const [height, roller] = [numberOf(values, 'height'), numberOf(values, 'roller')];
  if (high <= low) {
    return fault(
      worded`The reading on blocks, ${show(high)} mm, is not larger than the one below, ${show(low)} mm; stand the small end down.`,
    );
  }
  const half = Math.atan((high - low) / (2 * height)) / DEGREE;
  const small = low - roller * (1 + Math.tan((45 + half / 2) * DEGREE));
  if (small <= 0)
    return fault(
      worded`Rollers of ${show(roller)} mm leave no work between them; check the readings.`,
    );
  return {
    ok: true,
    value: half,
    working: worded`(${show(high, 6)} − ${show(low, 6)}) ÷ (2 × ${show(height)}): half angle ${show(half, 5)}° (${degreesMinutes(half)}); small end ${show(low, 6)} − ${show(roller)} × (1 + tan(45° + ${show(half / 2, 4)}°)) = ${show(small, 6)} mm`,
    parts: {
      ratio: part(ratioOf(half), 'ratio', 'change of diameter over length'),
      small: lengthPart(small, 'diameter at the small end'),
    },
  };
}

export const taperOverRollers: Rule = {
  name: 'taper-over-rollers',
  title: 'Outside taper over two rollers',
  topic: 'tapers',
  inputs: [
    aLength('lowReading', 2000, 'reading over the rollers on the plate, small end down'),
    aLength('highReading', 2000, 'reading over the same rollers on equal blocks'),
    aLength('height', 1000, 'height of the blocks'),
    aLength('roller', 100, 'diameter of a roller'),
  ],
  output: {
    quantity: 'angle',
    meaning: 'half angle of the taper',
    parts: { ratio: 'ratio', small: 'length' },
  },
  formula: 'tan(α/2) = (M2 − M1) ÷ (2 H); d = M1 − w (1 + tan(45° + α/4))',
  source: 'geometry',
  cautions: [CAUTION],
  work: workRollers,
};

function workBalls(values: RuleValues): Worked {
  const [large, small] = [numberOf(values, 'largeBall') / 2, numberOf(values, 'smallBall') / 2];
  const [top, deep] = [numberOf(values, 'largeDepth'), numberOf(values, 'smallDepth')];
  const apart = deep + small - (top + large);
  if (large <= small || apart <= large - small) {
    return fault(
      'The balls do not fit a taper that narrows downwards: the large one must be larger and sit well above the small one.',
    );
  }
  const half = Math.asin((large - small) / apart) / DEGREE;
  const mouth = 2 * (large / Math.cos(half * DEGREE) + (top + large) * Math.tan(half * DEGREE));
  return {
    ok: true,
    value: half,
    working: worded`balls ${show(apart, 6)} mm apart; (${show(large)} − ${show(small)}) ÷ ${show(apart, 6)} = sin of ${show(half, 5)}° (${degreesMinutes(half)}); mouth ${show(mouth, 6)} mm`,
    parts: {
      ratio: part(ratioOf(half), 'ratio', 'change of diameter over length'),
      mouth: lengthPart(mouth, 'diameter at the face'),
    },
  };
}

const depthSpan = [-200, 2000] as const;

export const taperWithBalls: Rule = {
  name: 'taper-with-balls',
  title: 'Taper hole with two balls',
  topic: 'tapers',
  inputs: [
    aLength('largeBall', 200, 'diameter of the large ball'),
    aLength('smallBall', 200, 'diameter of the small ball'),
    aNumber(
      'largeDepth',
      'length',
      depthSpan,
      'face down to the top of the large ball; negative when it stands proud',
    ),
    aNumber('smallDepth', 'length', depthSpan, 'face down to the top of the small ball'),
  ],
  output: {
    quantity: 'angle',
    meaning: 'half angle of the taper',
    parts: { ratio: 'ratio', mouth: 'length' },
  },
  formula:
    'sin(α/2) = (R − r) ÷ distance of the ball centres; mouth = 2 (R ÷ cos α/2 + depth × tan α/2)',
  source: 'geometry',
  cautions: [CAUTION],
  work: workBalls,
};

const barInput = aLength('bar', 1000, 'distance of the roller centres of the sine bar');

function workHeight(values: RuleValues): Worked {
  const [bar, angle] = [numberOf(values, 'bar'), numberOf(values, 'angle')];
  const height = bar * Math.sin(angle * DEGREE);
  const steep =
    angle > 45 ? '; above 45° a small slip makes a large error, measure the other angle' : '';
  return {
    ok: true,
    value: height,
    working: worded`${show(bar)} × sin ${show(angle, 6)}° = ${show(height, 6)} mm of gauge blocks${steep}`,
  };
}

export const sineBarHeight: Rule = {
  name: 'sine-bar-height',
  title: 'Gauge blocks under a sine bar',
  topic: 'tapers',
  inputs: [
    barInput,
    aNumber('angle', 'angle', [0, 60], 'angle to set (for a taper plug the included angle)'),
  ],
  output: { quantity: 'length', meaning: 'height of the gauge blocks' },
  formula: 'h = L sin α; use below 45°',
  source: 'Angular measurement notes; metrology ch. 4',
  cautions: [CAUTION],
  work: workHeight,
};

function workAngle(values: RuleValues): Worked {
  const [bar, height] = [numberOf(values, 'bar'), numberOf(values, 'height')];
  if (height > bar * Math.sin(60 * DEGREE)) {
    return fault(
      worded`Blocks of ${show(height)} mm would set a ${show(bar)} mm bar steeper than 60°; measure the other angle.`,
    );
  }
  const angle = Math.asin(height / bar) / DEGREE;
  return {
    ok: true,
    value: angle,
    working: worded`sin α = ${show(height, 6)} ÷ ${show(bar)}: ${show(angle, 6)}° (${degreesMinutes(angle)})`,
  };
}

export const sineBarAngle: Rule = {
  name: 'sine-bar-angle',
  title: 'Angle of a sine bar on blocks',
  topic: 'tapers',
  inputs: [barInput, aNumber('height', 'length', [0, 1000], 'height of the gauge blocks')],
  output: { quantity: 'angle', meaning: 'angle of the bar' },
  formula: 'sin α = h ÷ L',
  source: 'Angular measurement notes; metrology ch. 4',
  cautions: [CAUTION],
  work: workAngle,
};
