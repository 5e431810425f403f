/** What a feature of a block is called in one line, for a leader and for who cannot see the drawing. */

import { size, withLimits } from '../dimension-text.ts';
import type { DrawingWords } from '../drawing-words.ts';
import type { BlockFeature, Hole } from './block.ts';
import { SIDES } from './solid.ts';

/** A hole is told by its diameter, and how deep it is. */
export function holeText(hole: Hole, words: DrawingWords): string {
  const deep =
    hole.depth === undefined ? words.through : `× ${size(hole.depth, words)} ${words.deep}`;
  return `Ø${withLimits(hole.diameter, hole, words)} ${deep}`;
}

export function blockFeatureText(feature: BlockFeature, words: DrawingWords): string {
  if (feature.kind === 'hole') return holeText(feature, words);
  if (feature.kind === 'face') {
    const across = { length: words.long, width: words.wide, height: words.high };
    return `${withLimits(feature.size, feature, words)} ${across[SIDES[feature.side][0]]}`;
  }
  const wide = `${withLimits(feature.width, feature.widthLimits ?? {}, words)} ${words.wide}`;
  const deep = `${withLimits(feature.depth, feature, words)} ${words.deep}`;
  return `${words[feature.kind]} ${wide}, ${deep}`;
}
