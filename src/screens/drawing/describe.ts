/** The drawing in sentences, for who cannot see it. */
import { type AnyPiece, isBlock } from './any-piece.ts';
import type { BlockFeature } from './block/block.ts';
import { blockFeatureText } from './block/texts.ts';
import { calloutText, readingText, size } from './dimension-text.ts';
import type { DrawingWords } from './drawing-words.ts';
import type { Feature, PieceState } from './piece.ts';
import { pieceLength, stateOf } from './piece.ts';

/** One line a feature: what it is to be, how far it is, what was measured. */
export function describePiece(piece: AnyPiece, state: PieceState, words: DrawingWords): string {
  const lines = piece.features.map((feature: Feature | BlockFeature) => {
    const { reading, widthReading } = state[feature.id] ?? {};
    const measured = [reading, widthReading].flatMap((one) =>
      one ? [`, ${words.measured} ${readingText(one, words)}`] : [],
    );
    const how = words[stateOf(state, feature.id)];
    return `${featureText(feature, words)}: ${how}${measured.join('')}.`;
  });
  return [`${headOf(piece, words)} mm.`, ...lines].join(' ');
}

function headOf(piece: AnyPiece, words: DrawingWords): string {
  if (!isBlock(piece))
    return `${words.drawing}, Ø${size(piece.stock.diameter, words)} × ${size(pieceLength(piece), words)}`;
  const { length, width, height } = piece.stock;
  const sides = [length, width, height].map((side) => size(side, words));
  return `${words.views}, ${sides.join(' × ')}`;
}

function featureText(feature: Feature | BlockFeature, words: DrawingWords): string {
  switch (feature.kind) {
    case 'face':
    case 'slot':
    case 'shoulder':
    case 'hole':
      return blockFeatureText(feature, words);
    default:
      return calloutText(feature, words);
  }
}
