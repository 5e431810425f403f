/** Checks that the drawing of a flow names steps, readings and lengths that exist. */

import type { Path } from './fault.ts';
import type { FlowFile } from './flow-shape.ts';
import { listed, suggestion } from './nearest.ts';
import {
  angleKeys,
  type PieceFeature,
  type SizeKey,
  sizesOf,
  stockSizesOf,
} from './piece-shape.ts';
import { checkUnique } from './resolve-kind.ts';
import { type Complain, checkRef } from './resolve-values.ts';
import type { Scope } from './scope.ts';

export function checkPiece(flow: FlowFile, scope: Scope, complain: Complain): void {
  checkMakes(flow, complain);
  const piece = flow.piece;
  if (!piece) return;
  for (const [key, ref] of stockSizesOf(piece))
    checkRef(ref, { quantity: 'length' }, scope, ['piece', key], complain);
  checkUnique(piece.features, ['piece', 'features'], 'feature', complain);
  piece.features.forEach((feature: PieceFeature, index) => {
    const path = ['piece', 'features', index];
    for (const [key, ref] of sizesOf(feature))
      checkRef(ref, { quantity: quantityOf(key) }, scope, [...path, key], complain);
    checkReading(feature.reading, scope, [...path, 'reading'], complain);
    if ('widthReading' in feature)
      checkReading(feature.widthReading, scope, [...path, 'widthReading'], complain);
  });
}

function quantityOf(key: SizeKey): 'angle' | 'length' {
  return (angleKeys as readonly string[]).includes(key) ? 'angle' : 'length';
}

function checkReading(
  reading: string | undefined,
  scope: Scope,
  path: Path,
  complain: Complain,
): void {
  if (reading === undefined || scope.readings.has(reading)) return;
  const names = [...scope.readings.keys()];
  complain(
    path,
    `There is no reading "${reading}".${suggestion(reading, names)} There are: ${listed(names)}.`,
  );
}

function checkMakes(flow: FlowFile, complain: Complain): void {
  const features = flow.piece?.features.map((feature) => feature.id) ?? [];
  flow.steps.forEach((step, index) => {
    step.makes.forEach((feature, at) => {
      if (features.includes(feature)) return;
      complain(
        ['steps', index, 'makes', at],
        `The piece has no feature "${feature}".${suggestion(feature, features)} It has: ${listed(features)}.`,
      );
    });
  });
}
