/** The drawing in sentences, for who cannot see it. */
import { calloutText, readingText, size } from './dimension-text.ts';
import type { DrawingWords } from './drawing-words.ts';
import type { Piece, PieceState } from './piece.ts';
import { pieceLength, stateOf } from './piece.ts';

/** One line a feature: what it is to be, how far it is, what was measured. */
export function describePiece(piece: Piece, state: PieceState, words: DrawingWords): string {
  const stock = `Ø${size(piece.stock.diameter, words)} × ${size(pieceLength(piece), words)} mm`;
  const lines = piece.features.map((feature) => {
    const reading = state[feature.id]?.reading;
    const measured = reading ? `, ${words.measured} ${readingText(reading, words)}` : '';
    return `${calloutText(feature, words)}: ${words[stateOf(state, feature.id)]}${measured}.`;
  });
  return [`${words.drawing}, ${stock}.`, ...lines].join(' ');
}
