/** A machine card: what one real machine in one shop can do. Its limits always rule. */

import { z } from 'zod';
import { materialShape } from './material-shape.ts';
import { idShape, schemaShape, sentenceShape } from './words-shape.ts';

/** A number with its unit, as on the machine's plate: "0.02 mm", "2000 rpm", "1.1 kW". */
const measureShape = z.string().min(1).max(30);

export const cardShape = z.strictObject({
  $schema: schemaShape,
  followrest: z.literal('machine-card'),
  version: z.literal(1),
  id: idShape,
  title: z.string().min(1).max(60),
  machineKind: idShape,
  /** How this shop reads its dials and gauges. */
  units: z.enum(['metric', 'inch']),
  speeds: z.array(measureShape).min(1).max(64),
  feeds: z.array(measureShape).max(64).default([]),
  /** The speed marked on the chuck body. */
  chuckLimit: measureShape.optional(),
  motorPower: measureShape.optional(),
  /** Share of the motor's power that reaches the spindle, 0 to 1. */
  efficiency: z.number().gt(0).lte(1).optional(),
  /** Cross slide: what the dial reads when it moves, and one division. */
  crossReads: z.enum(['diameter', 'radius']).optional(),
  crossDivision: measureShape.optional(),
  compoundDivision: measureShape.optional(),
  /** Tailstock quill travel for one turn of its wheel. */
  quillPerTurn: measureShape.optional(),
  leadScrewPitch: measureShape.optional(),
  swing: measureShape.optional(),
  notes: sentenceShape.optional(),
  /** The shop's own materials, beside those of the trade's table. */
  materials: z.array(materialShape).max(40).optional(),
});

export type CardFile = z.infer<typeof cardShape>;
