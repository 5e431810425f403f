/** A lead given either as a pitch or as threads an inch: inputs for the thread and for the lead screw. */

import { type Worded, worded } from '../../texts/index.ts';
import { aLength, aNumber } from '../inputs.ts';
import type { RuleInput, RuleValues } from '../rule.ts';
import { numberIf } from '../values.ts';
import { MM_PER_INCH } from './designation.ts';

/** "pitch" and "tpi" as two inputs of which one is given. */
export function leadInputs(pitch: string, tpi: string, what: string): readonly RuleInput[] {
  return [
    aLength(pitch, 100, `pitch of ${what} (this or ${tpi})`, { optional: true }),
    aNumber(tpi, 'pitchCount', [0.25, 100], `threads an inch of ${what} (this or ${pitch})`, {
      optional: true,
    }),
  ];
}

/** The lead in mm out of the one that was given, or why not. */
export function leadOf(
  values: RuleValues,
  pitch: string,
  tpi: string,
): number | { readonly fault: Worded } {
  const [inMm, inInch] = [numberIf(values, pitch), numberIf(values, tpi)];
  if (inMm !== undefined && inInch === undefined) return inMm;
  if (inMm === undefined && inInch !== undefined) return MM_PER_INCH / inInch;
  return { fault: worded`Give either ${pitch} or ${tpi}, one of the two.` };
}
