/** One sheet on the page, ready to print: the print rules are in sheet.css, which the page links. */

import { useLanguage } from '../use-say.ts';
import type { AnyPiece } from './any-piece.ts';
import { describePiece } from './describe.ts';
import type { DrawingWords } from './drawing-words.ts';
import { drawingWords } from './drawing-words.ts';
import { InkMarks } from './PieceDrawing.tsx';
import type { PieceState } from './piece.ts';
import type { SheetHead } from './sheet.ts';
import { SHEET, sheetInk } from './sheet.ts';

export interface PieceSheetProps {
  readonly piece: AnyPiece;
  readonly state: PieceState;
  readonly head: SheetHead;
  readonly words?: DrawingWords | undefined;
}

/** The same marks that `sheetSvg` writes, so that what is printed is what is kept. Paper is white in dark mode too. */
export function PieceSheet({ piece, state, head, ...given }: PieceSheetProps) {
  const language = useLanguage();
  const words = given.words ?? drawingWords(language);
  return (
    <svg
      xmlns="http://www.w3.org/2000/svg"
      class="piece-sheet"
      viewBox={`0 0 ${SHEET.width} ${SHEET.height}`}
      role="img"
      aria-label={head.title}
      font-family="'DejaVu Sans', Arial, sans-serif"
    >
      <title>{head.title}</title>
      <desc>{describePiece(piece, state, words)}</desc>
      <InkMarks ink={sheetInk(piece, state, head, words)} />
    </svg>
  );
}
