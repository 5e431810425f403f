/** The basic profile of a 60° thread, ISO metric and Unified alike: pitch diameter, minor, root, depth. */

import { worded } from '../../texts/index.ts';
import { aChoice, aText } from '../inputs.ts';
import { lengthPart } from '../part.ts';
import type { Rule, RuleValues, Worked } from '../rule.ts';
import { show } from '../show.ts';
import { fault, wordOf } from '../values.ts';
import { parseThread, type Thread } from './designation.ts';

/** Height of the sharp triangle over the pitch: cos 30°. */
export const TRIANGLE = Math.sqrt(3) / 2;

/** mm. Depths are radial. */
export interface Profile {
  readonly pitchDiameter: number;
  /** Basic minor diameter, the bore of an internal thread: d − 5/4 H. */
  readonly minor: number;
  /** Root of an external thread with its rounding: d − 17/12 H. */
  readonly root: number;
  readonly externalDepth: number;
  readonly internalDepth: number;
}

/** H = 0.8660 P; pitch diameter d − 3/4 H; minor d − 5/4 H; root d − 17/12 H. */
export function profileOf({ major, pitch }: Pick<Thread, 'major' | 'pitch'>): Profile {
  const height = TRIANGLE * pitch;
  return {
    pitchDiameter: major - (3 / 4) * height,
    minor: major - (5 / 4) * height,
    root: major - (17 / 12) * height,
    externalDepth: (17 / 24) * height,
    internalDepth: (5 / 8) * height,
  };
}

export type Side = 'external' | 'internal';

export const threadInput = aText('thread', 'M10x1.5', 'thread as written on the drawing');
export const sideInput = aChoice('side', ['external', 'internal'], 'screw or nut thread', {
  default: 'external',
  said: {
    external: ['outside', 'screw', 'bolt', 'male'],
    internal: ['inside', 'nut', 'female', 'bore'],
  },
});
export const sideOf = (values: RuleValues): Side =>
  wordOf(values, 'side') === 'internal' ? 'internal' : 'external';

function work(values: RuleValues): Worked {
  const thread = parseThread(wordOf(values, 'thread'));
  if ('fault' in thread) return fault(thread.fault);
  const side = sideOf(values);
  const profile = profileOf(thread);
  const depth = side === 'external' ? profile.externalDepth : profile.internalDepth;
  const factor = side === 'external' ? '0.6134' : '0.5413';
  return {
    ok: true,
    value: depth,
    working: worded`${thread.name} ${side}: depth ${factor} × ${show(thread.pitch)} = ${show(depth, 4)} mm; pitch diameter ${show(profile.pitchDiameter)}, minor ${show(profile.minor)}, root ${show(profile.root)} mm`,
    parts: {
      pitch: lengthPart(thread.pitch, 'pitch'),
      major: lengthPart(thread.major, 'major diameter'),
      pitchDiameter: lengthPart(profile.pitchDiameter, 'basic pitch diameter'),
      minor: lengthPart(profile.minor, 'basic minor diameter, the bore of a nut'),
      root: lengthPart(profile.root, 'root diameter of the screw'),
    },
  };
}

export const threadSizes: Rule = {
  name: 'thread-sizes',
  title: 'Depth and diameters of a thread',
  topic: 'threads',
  inputs: [threadInput, sideInput],
  output: {
    quantity: 'length',
    meaning: 'radial depth to cut',
    parts: {
      pitch: 'length',
      major: 'length',
      pitchDiameter: 'length',
      minor: 'length',
      root: 'length',
    },
  },
  formula:
    'H = 0.86603 P; d2 = d − 0.64952 P; D1 = d − 1.08253 P; d3 = d − 1.22687 P; depth 0.61343 P outside, 0.54127 P inside',
  source:
    'ISO 68-1 and ISO 724 (also ASME B1.1 basic profile). Older lathe texts cut 0.6495 P outside; one maker 0.577 P inside',
  cautions: ['Set a low spindle speed and know where the half-nut lever is before threading.'],
  work,
};
