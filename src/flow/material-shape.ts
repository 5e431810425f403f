/** A shop's own material as it is kept and as a machine card carries it: one row like those of the trade's table. */

import { z } from 'zod';
import { type Material, shopMaterialFaults } from '../trade/index.ts';

const speed = z.number();
/** m/min with high-speed steel, carbide, coated carbide; null where nobody gives a number. */
const cell = z.tuple([speed, speed.nullable(), speed.nullable()]);
const source = z.string().min(1).max(400);

export const materialShape = z.strictObject({
  name: z.string().min(1).max(40),
  title: z.string().min(1).max(60),
  iso: z.enum(['P', 'M', 'K', 'N', 'S', 'H', 'O']),
  group: z.int().min(1).max(41).exactOptional(),
  speeds: z.strictObject({
    turn: cell,
    drill: cell,
    ream: cell,
    mill: cell,
    part: cell,
    thread: cell,
    tap: cell,
  }),
  /** N/mm² for chip thickness 1 mm and width 1 mm, and the exponent. */
  force: z.strictObject({ kc: z.number(), mc: z.number() }).exactOptional(),
  modulus: z.number(),
  expansion: z.number(),
  density: z.number(),
  cutDry: z.boolean(),
  sources: z.strictObject({
    turn: source,
    hole: source,
    mill: source,
    part: source,
    thread: source,
    force: source,
    modulus: source,
    expansion: source,
    density: source,
  }),
});

export type MaterialRead =
  | { readonly ok: true; readonly material: Material }
  | { readonly ok: false; readonly faults: readonly string[] };

/** A kept value as a material, or what is wrong with it, each a sentence. */
export function readMaterial(value: unknown): MaterialRead {
  const read = materialShape.safeParse(value);
  if (!read.success) {
    return {
      ok: false,
      faults: read.error.issues.map(({ path, message }) => `${path.join('.')}: ${message}.`),
    };
  }
  const faults = shopMaterialFaults([read.data]);
  return faults.length > 0 ? { ok: false, faults } : { ok: true, material: read.data };
}
