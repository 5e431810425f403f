/** The drawing on an A4 sheet, landscape, with border and title block. */
import { type AnyPiece, drawingOf, isBlock } from './any-piece.ts';
import { projectionSymbol } from './block/symbol.ts';
import { describePiece } from './describe.ts';
import { escaped, written } from './drawing-svg.ts';
import type { DrawingWords } from './drawing-words.ts';
import { ENGLISH_DRAWING } from './drawing-words.ts';
import type { Ink } from './ink.ts';
import { inkOf } from './ink.ts';
import type { Place } from './marks.ts';
import type { PieceState } from './piece.ts';
import { textWidth } from './text-width.ts';

/** What the title block says; each field is text already. */
export interface SheetHead {
  /** Name of the piece or flow. */
  readonly title: string;
  /** Flow, version, operator, date and the like; three to a row. */
  readonly fields: readonly { readonly label: string; readonly value: string }[];
  /** "Not to scale, mm": the drawing fills the sheet. */
  readonly note: string;
}

/** A4 in tenths of a millimetre. Border 20 mm at the filing edge, 10 mm else (from memory: ISO 5457). */
export const SHEET = { width: 2970, height: 2100 };
const BORDER = { left: 200, right: 2870, top: 100, bottom: 2000 };
/** The title block is 180 mm wide (from memory: ISO 7200), at the lower right. */
const BLOCK_WIDTH = 1800;
const COLUMNS = 3;
const ROW = 120;
const TITLE_ROW = 150;
const LETTERS = 40;
/** Of the drawing itself; a drawing too high for the sheet is made smaller as a whole. */
const LETTERING = 48;
const MARGIN = 50;
/** The large end of the cone in the symbol of projection. */
const SYMBOL = 140;
const INK = '#111';

/** A whole SVG document of one sheet, 297 by 210 mm. */
export function sheetSvg(
  piece: AnyPiece,
  state: PieceState,
  head: SheetHead,
  words: DrawingWords = ENGLISH_DRAWING,
): string {
  return [
    `<svg xmlns="http://www.w3.org/2000/svg" width="297mm" height="210mm" viewBox="0 0 ${SHEET.width} ${SHEET.height}" font-family="'DejaVu Sans', Arial, sans-serif">`,
    `<title>${escaped(head.title)}</title>`,
    `<desc>${escaped(describePiece(piece, state, words))}</desc>`,
    ...sheetInk(piece, state, head, words).map(written),
    '</svg>',
    '',
  ].join('\n');
}

/** All that is on the sheet, in tenths of a millimetre from its upper left corner. */
export function sheetInk(
  piece: AnyPiece,
  state: PieceState,
  head: SheetHead,
  words: DrawingWords,
): readonly Ink[] {
  const room = {
    width: BORDER.right - BORDER.left - 2 * MARGIN,
    height: BORDER.bottom - BORDER.top - blockHeight(head) - 2 * MARGIN,
  };
  const layout = drawingOf(piece, state, { width: room.width, textSize: LETTERING, words });
  const grow = Math.min(1, room.height / layout.height, room.width / layout.width);
  const x = BORDER.left + MARGIN + (room.width - layout.width * grow) / 2;
  const y = BORDER.top + MARGIN + (room.height - layout.height * grow) / 2;
  const transform = `translate(${x.toFixed(1)} ${y.toFixed(1)}) scale(${grow.toFixed(4)})`;
  return [
    { tag: 'rect', attributes: { width: SHEET.width, height: SHEET.height, fill: '#fff' } },
    { tag: 'g', attributes: { transform }, inside: inkOf(layout) },
    box(BORDER.left, BORDER.top, BORDER.right - BORDER.left, BORDER.bottom - BORDER.top, 7),
    ...titleBlock(head),
    ...(isBlock(piece) ? projectionSymbol(symbolAt(head), SYMBOL) : []),
  ];
}

/** Beside the title block, half way up; it tells nothing where there is one view. */
function symbolAt(head: SheetHead): Place {
  return {
    x: BORDER.left + MARGIN + 0.3 * SYMBOL,
    y: BORDER.bottom - blockHeight(head) / 2,
  };
}

function blockHeight({ fields }: SheetHead): number {
  return TITLE_ROW + Math.ceil(fields.length / COLUMNS) * ROW;
}

function titleBlock(head: SheetHead): readonly Ink[] {
  const left = BORDER.right - BLOCK_WIDTH;
  const top = BORDER.bottom - blockHeight(head);
  const cell = BLOCK_WIDTH / COLUMNS;
  const fields = head.fields.flatMap(({ label, value }, index) => {
    const x = left + (index % COLUMNS) * cell;
    const y = top + TITLE_ROW + Math.floor(index / COLUMNS) * ROW;
    return [
      box(x, y, cell, ROW, 3.5),
      letters(x + 20, y + 40, 28, label, cell - 40),
      letters(x + 20, y + 96, LETTERS, value, cell - 40),
    ];
  });
  return [
    box(left, top, BLOCK_WIDTH, blockHeight(head), 7),
    letters(left + 30, top + 98, 64, head.title, BLOCK_WIDTH - 560, 700),
    letters(BORDER.right - 500, top + 95, LETTERS, head.note, 470),
    ...fields,
  ];
}

function box(x: number, y: number, width: number, height: number, breadth: number): Ink {
  return {
    tag: 'rect',
    attributes: { x, y, width, height, fill: 'none', stroke: INK, 'stroke-width': breadth },
  };
}

/** Text that shrinks rather than leaves its cell. */
function letters(
  x: number,
  y: number,
  size: number,
  text: string,
  room: number,
  weight = 400,
): Ink {
  const fit = Math.min(1, room / Math.max(textWidth(text, size, weight > 400), 1));
  const attributes = { x, y, 'font-size': Number((size * fit).toFixed(1)), fill: INK };
  return { tag: 'text', attributes: { ...attributes, 'font-weight': weight }, text };
}
