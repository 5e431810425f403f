/** Conditions over facts and moments, as data: they can be walked by the prover, so nothing is hidden in text. */

import { z } from 'zod';
import { idShape } from './words-shape.ts';

const speedLimits = ['chuckLimit', 'topSpeed', 'workLimit'] as const;
export type SpeedLimit = (typeof speedLimits)[number];

export type Condition =
  | { readonly fact: string; readonly is: string }
  /** Also true while the fact is not known. */
  | { readonly fact: string; readonly not: string }
  | { readonly moment: string }
  /** A step that asks for this fact stands open: hands make it so, or eyes look whether it is. */
  | { readonly asking: string }
  /** The speed of the step now is above this limit: of the machine card, or the one the step states for the work. */
  | { readonly speedAbove: SpeedLimit }
  | { readonly all: readonly Condition[] }
  | { readonly any: readonly Condition[] };

export const conditionShape: z.ZodType<Condition> = z.lazy(() =>
  z.union([
    z.strictObject({ fact: idShape, is: idShape }),
    z.strictObject({ fact: idShape, not: idShape }),
    z.strictObject({ moment: idShape }),
    z.strictObject({ asking: idShape }),
    z.strictObject({ speedAbove: z.enum(speedLimits) }),
    z.strictObject({ all: z.array(conditionShape).min(1) }),
    z.strictObject({ any: z.array(conditionShape).min(1) }),
  ]),
);
