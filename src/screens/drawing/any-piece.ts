/** A piece of either sort, drawn as its sort is drawn: a half section of what is turned, views of a block. */

import type { Block } from './block/block.ts';
import { layOutBlock } from './block/layout.ts';
import { type LayoutOptions, layOut } from './layout.ts';
import type { Drawing } from './marks.ts';
import type { Piece, PieceState } from './piece.ts';

export type AnyPiece = Piece | Block;

export function isBlock(piece: AnyPiece): piece is Block {
  return 'height' in piece.stock;
}

export function drawingOf(piece: AnyPiece, state: PieceState, options: LayoutOptions): Drawing {
  return isBlock(piece) ? layOutBlock(piece, state, options) : layOut(piece, state, options);
}
