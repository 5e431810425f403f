/** Limits of Unified threads, 2A for screws and 2B for nuts, by the formulas of ASME B1.1. */

import { stepsHalfEven } from '../rounding.ts';
import { MM_PER_INCH, type Thread } from './designation.ts';
import { profileOf, type Side } from './profile.ts';
import type { ThreadLimits } from './thread-limit-values.ts';

/**
 * Everything inside this file is in inches, as the standard's formulas are. A half goes to the even
 * digit and each step is rounded before the next: only so do 5/8-11 and 1 3/4-5 come out as printed.
 */
function rounded(inches: number, decimals: number): number {
  const step = 10 ** -decimals;
  return Number((stepsHalfEven(inches, step) * step).toFixed(decimals));
}

/**
 * 2A pitch diameter tolerance, kept to six decimals before anything is made of it: 1/4-20 sits on a
 * rounding edge. LE is the diameter for UNC and UNF, nine pitches otherwise.
 */
function screwTolerance(diameter: number, pitch: number, engagement: number): number {
  const sum =
    0.0015 * Math.cbrt(diameter) + 0.0015 * Math.sqrt(engagement) + 0.015 * pitch ** (2 / 3);
  return rounded(sum, 6);
}

/** 2B minor diameter tolerance: two formulas, below and from 1/4 in. */
function nutMinorTolerance(diameter: number, pitch: number): number {
  if (diameter >= 0.25) return 0.25 * pitch - 0.4 * pitch * pitch;
  const wanted = 0.05 * pitch ** (2 / 3) + (0.03 * pitch) / diameter - 0.002;
  return Math.min(wanted, 0.394 * pitch);
}

function inMillimetres(limits: ThreadLimits): ThreadLimits {
  const { className, ...sizes } = limits;
  const metric = Object.fromEntries(
    Object.entries(sizes).map(([name, inches]) => [name, inches * MM_PER_INCH]),
  );
  return { ...limits, ...metric, className };
}

/** Minor diameter: the UNR reference, major − 1.19078 P. */
function screw(diameter: number, pitch: number, basic: number, tolerance: number): ThreadLimits {
  const allowance = rounded(0.3 * rounded(tolerance, 4), 4);
  const majorMax = rounded(diameter - allowance, 4);
  const pitchMax = rounded(basic - allowance, 4);
  return {
    className: '2A',
    pitchMin: rounded(pitchMax - rounded(tolerance, 4), 4),
    pitchMax,
    majorMin: rounded(majorMax - rounded(0.06 * pitch ** (2 / 3), 4), 4),
    majorMax,
    minorMax: rounded(majorMax - 1.19078 * pitch, 4),
  };
}

/** From #6 on the standard's table rounds the minor diameter to 0.001 in. */
function nut(diameter: number, pitch: number, basic: number, tolerance: number): ThreadLimits {
  const decimals = diameter >= 0.138 ? 3 : 4;
  const minor = rounded(diameter - (5 / 8) * Math.sqrt(3) * pitch, 4);
  return {
    className: '2B',
    pitchMin: basic,
    pitchMax: rounded(basic + rounded(1.3 * tolerance, 4), 4),
    majorMin: diameter,
    minorMin: rounded(minor, decimals),
    minorMax: rounded(minor + rounded(nutMinorTolerance(diameter, pitch), 4), decimals),
  };
}

/** The limits in mm; rounded to 0.0001 in as the standard's table is. */
export function unifiedLimits(thread: Thread, side: Side): ThreadLimits {
  const diameter = rounded(thread.major / MM_PER_INCH, 6);
  const pitch = thread.pitch / MM_PER_INCH;
  const basic = rounded(profileOf(thread).pitchDiameter / MM_PER_INCH, 4);
  const engagement = thread.series === 'special' ? 9 * pitch : diameter;
  const tolerance = screwTolerance(diameter, pitch, engagement);
  const limits = side === 'external' ? screw : nut;
  return inMillimetres(limits(diameter, pitch, basic, tolerance));
}
