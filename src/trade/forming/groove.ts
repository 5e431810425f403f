/** A groove wider than the blade: speed, plunges and how far the blade sticks out. */

import { type Worded, worded } from '../../texts/index.ts';
import { aChoice, aLength, aNumber } from '../inputs.ts';
import { lengthPart, part } from '../part.ts';
import type { Rule, RuleValues, Worked } from '../rule.ts';
import { show, showList } from '../show.ts';
import { spindleSpeed } from '../turning/spindle-speed.ts';
import { fault, numberOf, wordOf } from '../values.ts';

/** Share of the turning speed, middle of 0.5 to 0.6 and of 0.6 to 0.7. Common practice, no source. */
const SPEED_SHARE: Readonly<Record<string, number>> = { hss: 0.55, carbide: 0.65 };
/** Each further plunge overlaps the last by this share of the blade. Common practice, no source. */
const OVERLAP = 0.2;
/** Blade widths a blade may stick out, and mm beyond the depth. Common practice, no source. */
const MOST_OVERHANG = 8;
const CLEARANCE = 1.5;

/** Places of the blade's left corner from the groove's left side, mm; one when the blade is as wide. */
export function plunges(groove: number, blade: number): readonly number[] {
  const rest = groove - blade;
  const steps = Math.ceil(rest / (blade * (1 - OVERLAP)) - 1e-9);
  return Array.from({ length: steps + 1 }, (_, index) =>
    steps === 0 ? 0 : (rest * index) / steps,
  );
}

function grooveFault(values: RuleValues): Worded | undefined {
  const [blade, groove] = [numberOf(values, 'blade'), numberOf(values, 'width')];
  const [depth, diameter] = [numberOf(values, 'depth'), numberOf(values, 'diameter')];
  if (blade > groove)
    return worded`A ${show(blade)} mm blade cannot cut a ${show(groove)} mm groove; take a narrower one.`;
  if (depth >= diameter / 2) {
    return worded`A groove ${show(depth)} mm deep cuts ${show(diameter)} mm work through; that is parting off.`;
  }
  if (depth + CLEARANCE <= MOST_OVERHANG * blade) return undefined;
  return worded`The blade would stick out ${show(depth + CLEARANCE)} mm, more than 8 times its ${show(blade)} mm; take a wider blade or go less deep.`;
}

function work(values: RuleValues): Worked {
  const wrong = grooveFault(values);
  if (wrong !== undefined) return fault(wrong);
  const [blade, width] = [numberOf(values, 'blade'), numberOf(values, 'width')];
  const [depth, diameter] = [numberOf(values, 'depth'), numberOf(values, 'diameter')];
  const turning = numberOf(values, 'turningSpeed');
  const share = SPEED_SHARE[wordOf(values, 'tool')] ?? 0.5;
  const speed = turning * share;
  const places = plunges(width, blade);
  const spindle = spindleSpeed(speed, diameter);
  return {
    ok: true,
    value: speed,
    working: worded`${show(turning)} × ${share} = ${show(speed, 4)} m/min, ${show(spindle, 4)} rev/min on ${show(diameter)} mm; ${places.length} plunges at ${showList(places, 3)} mm; blade out ${show(depth + CLEARANCE)} mm`,
    parts: {
      spindleSpeed: part(spindle, 'spindleSpeed', 'spindle speed before any limit'),
      plunges: lengthPart(places, "blade's left corner from the groove's left side, each plunge"),
      overhang: lengthPart(depth + CLEARANCE, 'how far the blade sticks out'),
      bottom: lengthPart(diameter - 2 * depth, 'diameter at the bottom of the groove'),
    },
  };
}

export const groovePlan: Rule = {
  name: 'groove-plan',
  title: 'Speed and plunges of a groove',
  topic: 'forming',
  inputs: [
    aNumber('turningSpeed', 'surfaceSpeed', [0, 1000], 'turning speed of this material and tool', {
      aboveMin: true,
    }),
    aChoice('tool', ['hss', 'carbide'], 'tool material', {
      default: 'hss',
      said: {
        hss: ['high speed steel', 'high-speed steel'],
        carbide: ['insert', 'tungsten carbide'],
      },
    }),
    aLength('diameter', 2000, 'diameter of the work'),
    aLength('width', 200, 'width of the groove'),
    aLength('depth', 200, 'depth of the groove, a side'),
    aLength('blade', 50, 'width of the blade'),
  ],
  output: {
    quantity: 'surfaceSpeed',
    meaning: 'speed for the groove',
    parts: {
      spindleSpeed: 'spindleSpeed',
      plunges: 'length',
      overhang: 'length',
      bottom: 'length',
    },
  },
  formula:
    'speed = 0.55 (HSS) or 0.65 (carbide) × turning; plunges overlap by a fifth of the blade; overhang at most 8 blade widths',
  source: 'common practice, no source',
  cautions: [
    'Set the blade on centre and square; groove as near to the chuck as the jaws allow.',
    'Chatter or squeal: stop, shorten the overhang, take half the speed.',
  ],
  work,
};
