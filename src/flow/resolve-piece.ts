/** Checks that the drawing of a flow names steps, readings and lengths that exist. */

import type { FlowFile } from './flow-shape.ts';
import { listed, suggestion } from './nearest.ts';
import { checkUnique } from './resolve-kind.ts';
import { type Complain, checkRef } from './resolve-values.ts';
import type { Scope } from './scope.ts';

const lengths = [
  'from',
  'to',
  'depth',
  'diameter',
  'largeDiameter',
  'smallDiameter',
  'size',
  'lower',
  'upper',
] as const;
const angles = ['angle', 'pointAngle'] as const;

export function checkPiece(flow: FlowFile, scope: Scope, complain: Complain): void {
  checkMakes(flow, complain);
  const piece = flow.piece;
  if (!piece) return;
  checkRef(
    piece.stockDiameter,
    { quantity: 'length' },
    scope,
    ['piece', 'stockDiameter'],
    complain,
  );
  checkRef(piece.stockLength, { quantity: 'length' }, scope, ['piece', 'stockLength'], complain);
  checkUnique(piece.features, ['piece', 'features'], 'feature', complain);
  piece.features.forEach((feature, index) => {
    const path = ['piece', 'features', index];
    for (const key of lengths) {
      const value = feature[key];
      if (value) checkRef(value, { quantity: 'length' }, scope, [...path, key], complain);
    }
    for (const key of angles) {
      const value = feature[key];
      if (value) checkRef(value, { quantity: 'angle' }, scope, [...path, key], complain);
    }
    if (feature.reading !== undefined && !scope.readings.has(feature.reading)) {
      const names = [...scope.readings.keys()];
      complain(
        [...path, 'reading'],
        `There is no reading "${feature.reading}".${suggestion(feature.reading, names)} There are: ${listed(names)}.`,
      );
    }
  });
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
