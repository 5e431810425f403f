/** Limits of ISO metric threads, 6g for screws and 6H for nuts, normal length of engagement. */

import { type Worded, worded } from '../../texts/index.ts';
import { show } from '../show.ts';
import type { Thread } from './designation.ts';
import { byPitch, diameterSteps, smallestStep } from './metric-tolerances.ts';
import { profileOf, type Side, TRIANGLE } from './profile.ts';
import type { ThreadLimits } from './thread-limit-values.ts';

const MICRO = 1000;

/** µm. */
interface Tolerances {
  readonly es: number;
  readonly td: number;
  readonly td1: number;
  readonly screwPitch: number;
  readonly nutPitch: number;
}

function tolerancesOf({ major, pitch }: Thread): Tolerances | undefined {
  const onPitch = byPitch[String(pitch)];
  const step = major > smallestStep ? diameterSteps.find(({ upTo }) => major <= upTo) : undefined;
  const onDiameter = step?.pitchDiameter[String(pitch)];
  if (onPitch === undefined || onDiameter === undefined) return undefined;
  const [es, td, td1] = onPitch;
  const [screwPitch, nutPitch] = onDiameter;
  return { es, td, td1, screwPitch, nutPitch };
}

/** Minor: flat root at most d2 − H/2, rounded root at least d2 − 0.616025 P. Source: Machinery's Handbook 27 p. 1802; printed 6g tables. */
function screw(thread: Thread, { es, td, screwPitch }: Tolerances): ThreadLimits {
  const height = TRIANGLE * thread.pitch;
  const majorMax = thread.major - es / MICRO;
  const pitchMax = profileOf(thread).pitchDiameter - es / MICRO;
  const pitchMin = pitchMax - screwPitch / MICRO;
  return {
    className: '6g',
    pitchMin,
    pitchMax,
    majorMin: majorMax - td / MICRO,
    majorMax,
    minorMax: pitchMax - height / 2,
    minorMin: pitchMin - 0.616025 * thread.pitch,
  };
}

function nut(thread: Thread, { td1, nutPitch }: Tolerances): ThreadLimits {
  const { pitchDiameter, minor } = profileOf(thread);
  return {
    className: '6H',
    pitchMin: pitchDiameter,
    pitchMax: pitchDiameter + nutPitch / MICRO,
    majorMin: thread.major,
    minorMin: minor,
    minorMax: minor + td1 / MICRO,
  };
}

/** The limits in mm, or why there are none. */
export function metricLimits(
  thread: Thread,
  side: Side,
): ThreadLimits | { readonly fault: Worded } {
  const tolerances = tolerancesOf(thread);
  if (tolerances === undefined) {
    return {
      fault: worded`The 6g/6H tables hold no ${show(thread.pitch)} mm pitch at ${show(thread.major)} mm diameter; take a standard pitch, M1.6 to M90.`,
    };
  }
  return side === 'external' ? screw(thread, tolerances) : nut(thread, tolerances);
}
