/** One taper, said in the four ways drawings say it. */

import { type Worded, worded } from '../../texts/index.ts';
import { part } from '../part.ts';
import type { Quantity, WorkedPart } from '../rule.ts';
import { show } from '../show.ts';

export const DEGREE = Math.PI / 180;

/** Degrees of the half angle for a change of diameter over length: tan(α/2) = C ÷ 2. */
export const halfAngle = (ratio: number) => Math.atan(ratio / 2) / DEGREE;

/** Change of diameter over length for a half angle in degrees. */
export const ratioOf = (half: number) => 2 * Math.tan(half * DEGREE);

/** "4° 45′ 49″" */
export function degreesMinutes(angle: number): Worded {
  const seconds = Math.round(angle * 3600);
  const minutes = Math.floor(seconds / 60);
  return worded`${Math.floor(minutes / 60)}° ${minutes % 60}′ ${seconds % 60}″`;
}

export const taperPartQuantities: Readonly<Record<string, Quantity>> = {
  included: 'angle',
  fromSquare: 'angle',
  ratio: 'ratio',
  oneIn: 'ratio',
  perFoot: 'length',
};

/** The other ways to say a taper of this ratio. */
export function taperParts(ratio: number): Readonly<Record<string, WorkedPart>> {
  const half = halfAngle(ratio);
  return {
    included: part(2 * half, 'angle', 'included angle'),
    fromSquare: part(90 - half, 'angle', 'setting when the compound reads 0 square to the axis'),
    ratio: part(ratio, 'ratio', 'change of diameter over length'),
    oneIn: part(1 / ratio, 'ratio', 'x of the taper 1 : x'),
    perFoot: part(12 * 25.4 * ratio, 'length', 'change of diameter over one foot'),
  };
}

/** "1 : 6, 2 inch a foot, half angle 4.7636° (4° 45′ 49″)" */
export function taperWords(ratio: number): Worded {
  const half = halfAngle(ratio);
  return worded`1 : ${show(1 / ratio, 5)}, ${show(12 * ratio, 5)} inch a foot, half angle ${show(half, 5)}° (${degreesMinutes(half)})`;
}
