/** The drawing of the piece on the page, as far as the run has come. */

import type { ComponentChild } from 'preact';
import { h } from 'preact';
import { useLanguage } from '../use-say.ts';
import { type AnyPiece, drawingOf } from './any-piece.ts';
import { describePiece } from './describe.ts';
import { drawingWords } from './drawing-words.ts';
import type { Ink } from './ink.ts';
import { inkOf } from './ink.ts';
import type { LayoutOptions } from './layout.ts';
import type { PieceState } from './piece.ts';

export interface PieceDrawingProps extends LayoutOptions {
  readonly piece: AnyPiece;
  readonly state: PieceState;
  readonly title: string;
}

/** Give `width` about the CSS width it will have, so that the lettering keeps its size. */
export function PieceDrawing({ piece, state, title, ...options }: PieceDrawingProps) {
  const language = useLanguage();
  const words = options.words ?? drawingWords(language);
  const layout = drawingOf(piece, state, { ...options, words });
  return (
    <svg
      xmlns="http://www.w3.org/2000/svg"
      class="piece-drawing"
      viewBox={`0 0 ${layout.width} ${Math.ceil(layout.height)}`}
      role="img"
      aria-label={title}
      font-family="system-ui, 'DejaVu Sans', sans-serif"
    >
      <title>{title}</title>
      <desc>{describePiece(piece, state, words)}</desc>
      <InkMarks ink={inkOf(layout)} />
    </svg>
  );
}

/** Plain elements as they were worked out. */
export function InkMarks({ ink }: { readonly ink: readonly Ink[] }) {
  return <>{ink.map(element)}</>;
}

function element({ tag, attributes, text, inside }: Ink, key: number): ComponentChild {
  return h(tag, { key, ...attributes }, text, inside?.map(element));
}
