/** Features that the bar of a job has no room for: what would be turned there is air, or the chuck. */

import type { Card } from './card.ts';
import type { Numbers } from './numbers.ts';
import { nothing, roomTeller } from './piece-room.ts';
import { isBlock, type TurnedFeature } from './piece-shape.ts';
import type { Flow } from './resolve.ts';
import type { ValueRef } from './words-shape.ts';

/** One sentence for each feature that the bar is too thin or too short for; sizes that wait for a reading are not judged. */
export function barFaults(flow: Flow, card: Card, numbers: Numbers): readonly string[] {
  const { piece } = flow.file;
  if (!piece || isBlock(piece)) return [];
  const tell = roomTeller(flow.language, card, 'beyondBar');
  const sizeOf = (ref: ValueRef) => numbers.number(ref, {});
  const most = (refs: readonly (ValueRef | undefined)[]) =>
    Math.max(0, ...refs.flatMap((ref) => (ref && sizeOf(ref)) ?? []));
  const over = (id: string, wanted: number, there: number | undefined) =>
    there === undefined || wanted <= there + nothing ? [] : [tell(id, wanted, there)];
  const diameter = sizeOf(piece.stockDiameter);
  const length = sizeOf(piece.stockLength);
  return piece.features.flatMap((feature) => [
    ...over(feature.id, most(acrossOf(feature)), acrossIn(feature, diameter)),
    ...over(feature.id, most(alongOf(feature)), length),
  ]);
}

/** A wall is left round a hole. */
function acrossIn({ kind }: TurnedFeature, bar: number | undefined): number | undefined {
  return kind === 'bore' && bar !== undefined ? bar - 3 * nothing : bar;
}

/** Grooves and cross-holes are as deep as they go in from the side. */
function alongOf({ kind, from, to, depth }: TurnedFeature) {
  return kind === 'groove' || kind === 'cross-hole' ? [from, to] : [from, to, depth];
}

function acrossOf({ diameter, largeDiameter, smallDiameter }: TurnedFeature) {
  return [diameter, largeDiameter, smallDiameter];
}
