/** What a flow makes, as data that a drawing is made from: a turned piece, or a block that is milled and drilled. */

import { z } from 'zod';
import { idShape, nameShape, type ValueRef, valueShape } from './words-shape.ts';

const featureBase = {
  id: idShape,
  /** There before the job begins. */
  given: z.literal(true).optional(),
  lower: valueShape.optional(),
  upper: valueShape.optional(),
  reading: nameShape.optional(),
};

/** Lengths in mm from the right-hand face; the drawing is made from these. */
const turnedFeatureShape = z.strictObject({
  kind: z.enum([
    'cylinder',
    'bore',
    'chamfer',
    'taper',
    'thread',
    'groove',
    'centre-drill',
    'cross-hole',
  ]),
  ...featureBase,
  /** Cut into a bore: a thread, or the chamfer at its mouth. */
  internal: z.literal(true).optional(),
  end: z.enum(['left', 'right']).optional(),
  from: valueShape.optional(),
  to: valueShape.optional(),
  depth: valueShape.optional(),
  diameter: valueShape.optional(),
  largeDiameter: valueShape.optional(),
  smallDiameter: valueShape.optional(),
  size: valueShape.optional(),
  angle: valueShape.optional(),
  pointAngle: valueShape.optional(),
  designation: z.string().max(30).optional(),
});

/** Limits and reading of a width, beside those of the depth. */
const widthBase = {
  width: valueShape,
  widthLower: valueShape.optional(),
  widthUpper: valueShape.optional(),
  widthReading: nameShape.optional(),
};

/** A side milled to the size that the block then has across it. */
const faceShape = z.strictObject({
  kind: z.literal('face'),
  ...featureBase,
  side: z.enum(['top', 'bottom', 'left', 'right', 'front', 'back']),
  size: valueShape,
});

/** Right through the block, from above. */
const slotShape = z.strictObject({
  kind: z.literal('slot'),
  ...featureBase,
  along: z.enum(['length', 'width']),
  /** Its nearer wall from the front face, or from the left one; without it, the slot is in the middle. */
  from: valueShape.optional(),
  depth: valueShape,
  ...widthBase,
});

/** A shoulder along one edge, from above. */
const shoulderShape = z.strictObject({
  kind: z.literal('shoulder'),
  ...featureBase,
  edge: z.enum(['front', 'back', 'left', 'right']),
  depth: valueShape,
  ...widthBase,
});

/** Drilled from above, right through where there is no depth. */
const holeShape = z.strictObject({
  kind: z.literal('hole'),
  ...featureBase,
  fromLeft: valueShape,
  fromFront: valueShape,
  diameter: valueShape,
  depth: valueShape.optional(),
  pointAngle: valueShape.optional(),
});

export const blockKinds = ['face', 'slot', 'shoulder', 'hole'] as const;

const blockFeatureShape = z.discriminatedUnion('kind', [
  faceShape,
  slotShape,
  shoulderShape,
  holeShape,
]);

const turnedPieceShape = z.strictObject({
  stockDiameter: valueShape,
  stockLength: valueShape,
  features: z.array(turnedFeatureShape).max(40),
});

/** As it lies on the machine: length from left to right, width from front to back, height upwards. */
const blockPieceShape = z.strictObject({
  stockLength: valueShape,
  stockWidth: valueShape,
  stockHeight: valueShape,
  features: z.array(blockFeatureShape).max(40),
});

export const pieceShape = z.union([turnedPieceShape, blockPieceShape]);

export type FilePiece = z.infer<typeof pieceShape>;
export type FileTurned = z.infer<typeof turnedPieceShape>;
export type FileBlock = z.infer<typeof blockPieceShape>;
export type TurnedFeature = z.infer<typeof turnedFeatureShape>;
export type BlockFeature = z.infer<typeof blockFeatureShape>;
export type PieceFeature = TurnedFeature | BlockFeature;

/** A block, and no turned piece. */
export function isBlock(piece: FilePiece): piece is FileBlock {
  return 'stockWidth' in piece;
}

/** Keys of the stock's own sizes, all lengths. */
export const stockKeys = ['stockDiameter', 'stockLength', 'stockWidth', 'stockHeight'] as const;

export const angleKeys = ['angle', 'pointAngle'] as const;

/** Keys of a feature that hold a size, in the order in which they are shown. */
export const sizeKeys = [
  ...([
    'diameter',
    'largeDiameter',
    'smallDiameter',
    'from',
    'to',
    'fromLeft',
    'fromFront',
  ] as const),
  ...(['width', 'depth', 'size', ...angleKeys, 'lower', 'upper'] as const),
  ...(['widthLower', 'widthUpper'] as const),
] as const;

export type SizeKey = (typeof sizeKeys)[number];

type Refs<K extends string> = readonly (readonly [K, ValueRef])[];

/** The sizes that a feature has, each with where it comes from. */
export function sizesOf(feature: PieceFeature): Refs<SizeKey> {
  return refsIn(feature, sizeKeys);
}

export function stockSizesOf(piece: FilePiece): Refs<(typeof stockKeys)[number]> {
  return refsIn(piece, stockKeys);
}

function refsIn<K extends string>(
  from: Partial<Readonly<Record<K, ValueRef | undefined>>>,
  keys: readonly K[],
): Refs<K> {
  return keys.flatMap((key) => {
    const ref = from[key];
    return ref === undefined ? [] : [[key, ref] as const];
  });
}
