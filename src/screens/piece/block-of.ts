/** The block of a job with the numbers that are known; a feature that lacks one is left out, and none is guessed. */

import type { FileBlock, BlockFeature as FileFeature, Job, Readings } from '../../flow/index.ts';
import { type SizeKey, sizesOf } from '../../flow/index.ts';
import type { Block, BlockFeature } from '../drawing/block/block.ts';
import type { Limits } from '../drawing/piece.ts';

/** Nothing when a size of the stock is not known. Readings in base units. */
export function blockOf(job: Job, file: FileBlock, readings: Readings): Block | undefined {
  const length = job.numbers.number(file.stockLength, readings);
  const width = job.numbers.number(file.stockWidth, readings);
  const height = job.numbers.number(file.stockHeight, readings);
  if (length === undefined || width === undefined || height === undefined) return undefined;
  const features = file.features.flatMap((feature) => {
    const sizes = Object.fromEntries(
      sizesOf(feature).map(([key, ref]) => [key, job.numbers.number(ref, readings)]),
    );
    return featureOf(feature, sizes) ?? [];
  });
  return { stock: { length, width, height }, features };
}

type Sizes = Partial<Readonly<Record<SizeKey, number | undefined>>>;

function featureOf(file: FileFeature, sizes: Sizes): BlockFeature | undefined {
  const { id } = file;
  const limits = pair(sizes.lower, sizes.upper);
  const { size, from, width, depth, diameter, fromLeft, fromFront, pointAngle } = sizes;
  if (file.kind === 'face')
    return size === undefined
      ? undefined
      : { kind: file.kind, id, side: file.side, size, ...limits };
  if (file.kind === 'hole') {
    const lacks = file.depth !== undefined && depth === undefined;
    if (fromLeft === undefined || fromFront === undefined || diameter === undefined || lacks)
      return undefined;
    return { kind: file.kind, id, fromLeft, fromFront, diameter, depth, pointAngle, ...limits };
  }
  if (width === undefined || depth === undefined) return undefined;
  const widthLimits = pair(sizes.widthLower, sizes.widthUpper);
  const cut = { id, width, depth, widthLimits, ...limits };
  if (file.kind === 'shoulder') return { kind: file.kind, edge: file.edge, ...cut };
  const lacks = file.from !== undefined && from === undefined;
  return lacks ? undefined : { kind: file.kind, along: file.along, from, ...cut };
}

/** Both limits, or none. */
function pair(lower: number | undefined, upper: number | undefined): Limits {
  return lower === undefined || upper === undefined ? {} : { lower, upper };
}
